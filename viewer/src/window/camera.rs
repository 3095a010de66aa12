//! The parallel projection for kiss3d: objects are turned and shifted into the
//! viewer's frame by themselves, so the camera never moves.

use crate::view::FRONT_MM;
use kiss3d::camera::Camera3d;
use kiss3d::event::WindowEvent;
use kiss3d::glamx::{Mat4, Pose3, Vec3};
use kiss3d::window::Canvas;

/// A camera at rest, as wide and high as the window.
pub struct FlatCamera {
    /// Half width and half height of the window, mm.
    pub half_mm: [f32; 2],
}

impl FlatCamera {
    fn projection(&self) -> Mat4 {
        let [w, h] = self.half_mm;
        let depth = 0.5 / FRONT_MM as f32;
        Mat4::from_cols_array(&[
            1.0 / w,
            0.0,
            0.0,
            0.0, //
            0.0,
            1.0 / h,
            0.0,
            0.0, //
            0.0,
            0.0,
            -depth,
            0.0, //
            0.0,
            0.0,
            0.5,
            1.0,
        ])
    }
}

impl Camera3d for FlatCamera {
    fn handle_event(&mut self, _: &Canvas, _: &WindowEvent) {}

    fn eye(&self) -> Vec3 {
        Vec3::new(0.0, 0.0, FRONT_MM as f32)
    }

    fn view_transform(&self) -> Pose3 {
        Pose3::IDENTITY
    }

    fn transformation(&self) -> Mat4 {
        self.projection()
    }

    fn inverse_transformation(&self) -> Mat4 {
        self.projection().inverse()
    }

    fn clip_planes(&self) -> (f32, f32) {
        (0.1, 2.0 * FRONT_MM as f32)
    }

    fn update(&mut self, _: &Canvas) {}

    fn view_transform_pair(&self, _: usize) -> (Pose3, Mat4) {
        (Pose3::IDENTITY, self.projection())
    }
}
