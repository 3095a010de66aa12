//! A surface with a colour at each vertex, lit from the viewer's eye; what is
//! translucent lets what was drawn before it through.

use kiss3d::camera::Camera3d;
use kiss3d::context::Context;
use kiss3d::glamx::{Mat4, Pose3, Vec3};
use kiss3d::light::LightCollection;
use kiss3d::resource::vertex_index::VERTEX_INDEX_FORMAT;
use kiss3d::resource::{
    GpuData, GpuMesh3d, Material3d, PipelineCache, RenderContext, RenderPhase, multisample_state,
};
use kiss3d::scene::{InstancesBuffer3d, ObjectData3d};
use std::any::Any;
use std::cell::RefCell;
use std::rc::Rc;

/// What changes between frames.
#[derive(Debug, Default)]
pub struct Look {
    /// Colour of each vertex, sRGB and opacity.
    pub colours: Vec<[u8; 4]>,
    /// Whether the colours are other than those last drawn.
    pub stale: bool,
    /// Part of the window that it may cover: left, top, width, height, pixels.
    pub part: [u32; 4],
}

/// Draws a mesh by the colours of its [`Look`].
pub struct VertexColours {
    look: Rc<RefCell<Look>>,
    pipeline: PipelineCache,
    layout: wgpu::BindGroupLayout,
    colours: Option<wgpu::Buffer>,
}

struct Uniforms {
    buffer: wgpu::Buffer,
    group: wgpu::BindGroup,
}

impl GpuData for Uniforms {
    fn as_any(&self) -> &dyn Any {
        self
    }

    fn as_any_mut(&mut self) -> &mut dyn Any {
        self
    }
}

/// Bytes of the uniforms: two matrices.
const UNIFORM_BYTES: u64 = 2 * 16 * 4;

const SHADER: &str = "
struct Uniforms { clip: mat4x4<f32>, turn: mat4x4<f32> }
@group(0) @binding(0) var<uniform> u: Uniforms;

struct Corner {
    @builtin(position) place: vec4<f32>,
    @location(0) normal: vec3<f32>,
    @location(1) colour: vec4<f32>,
}

@vertex
fn vertex(
    @location(0) place: vec3<f32>,
    @location(1) normal: vec3<f32>,
    @location(2) colour: vec4<f32>,
) -> Corner {
    var out: Corner;
    out.place = u.clip * vec4<f32>(place, 1.0);
    out.normal = (u.turn * vec4<f32>(normal, 0.0)).xyz;
    out.colour = colour;
    return out;
}

@fragment
fn fragment(in: Corner) -> @location(0) vec4<f32> {
    let light = 0.35 + 0.65 * abs(normalize(in.normal).z);
    return vec4<f32>(pow(in.colour.rgb, vec3<f32>(2.2)) * light, in.colour.a);
}
";

impl VertexColours {
    /// A material of this look, opaque or translucent.
    pub fn new(look: Rc<RefCell<Look>>, translucent: bool) -> Self {
        let context = Context::get();
        let layout = context.create_bind_group_layout(&wgpu::BindGroupLayoutDescriptor {
            label: None,
            entries: &[wgpu::BindGroupLayoutEntry {
                binding: 0,
                visibility: wgpu::ShaderStages::VERTEX,
                ty: wgpu::BindingType::Buffer {
                    ty: wgpu::BufferBindingType::Uniform,
                    has_dynamic_offset: false,
                    min_binding_size: None,
                },
                count: None,
            }],
        });
        let pipeline_layout = context.create_pipeline_layout(&wgpu::PipelineLayoutDescriptor {
            label: None,
            bind_group_layouts: &[Some(&layout)],
            immediate_size: 0,
        });
        let shader = context.create_shader_module(None, SHADER);
        let pipeline = PipelineCache::new(move |samples| {
            pipeline(&pipeline_layout, &shader, samples, translucent)
        });
        Self {
            look,
            pipeline,
            layout,
            colours: None,
        }
    }

    /// The colours on the graphics side, brought up to date.
    fn upload(&mut self) {
        let mut look = self.look.borrow_mut();
        if !look.stale && self.colours.is_some() {
            return;
        }
        look.stale = false;
        let bytes = look.colours.as_flattened();
        let context = Context::get();
        let size = (bytes.len() as u64).max(4);
        let buffer = match self.colours.take() {
            Some(buffer) if buffer.size() == size => buffer,
            _ => context.create_buffer(&wgpu::BufferDescriptor {
                label: None,
                size,
                usage: wgpu::BufferUsages::VERTEX | wgpu::BufferUsages::COPY_DST,
                mapped_at_creation: false,
            }),
        };
        context.write_buffer(&buffer, 0, bytes);
        self.colours = Some(buffer);
    }

    fn uniforms(&self) -> Uniforms {
        let context = Context::get();
        let buffer = context.create_buffer(&wgpu::BufferDescriptor {
            label: None,
            size: UNIFORM_BYTES,
            usage: wgpu::BufferUsages::UNIFORM | wgpu::BufferUsages::COPY_DST,
            mapped_at_creation: false,
        });
        let group = context.create_bind_group(&wgpu::BindGroupDescriptor {
            label: None,
            layout: &self.layout,
            entries: &[wgpu::BindGroupEntry {
                binding: 0,
                resource: buffer.as_entire_binding(),
            }],
        });
        Uniforms { buffer, group }
    }
}

fn pipeline(
    layout: &wgpu::PipelineLayout,
    shader: &wgpu::ShaderModule,
    samples: u32,
    translucent: bool,
) -> wgpu::RenderPipeline {
    let attribute = |shader_location, format| wgpu::VertexAttribute {
        offset: 0,
        shader_location,
        format,
    };
    let attributes = [
        [attribute(0, wgpu::VertexFormat::Float32x3)],
        [attribute(1, wgpu::VertexFormat::Float32x3)],
        [attribute(2, wgpu::VertexFormat::Unorm8x4)],
    ];
    let buffers = [0, 1, 2].map(|n: usize| {
        Some(wgpu::VertexBufferLayout {
            array_stride: if n == 2 { 4 } else { 12 },
            step_mode: wgpu::VertexStepMode::Vertex,
            attributes: &attributes[n],
        })
    });
    Context::get().create_render_pipeline(&wgpu::RenderPipelineDescriptor {
        label: None,
        layout: Some(layout),
        vertex: wgpu::VertexState {
            module: shader,
            entry_point: Some("vertex"),
            buffers: &buffers,
            compilation_options: wgpu::PipelineCompilationOptions::default(),
        },
        fragment: Some(wgpu::FragmentState {
            module: shader,
            entry_point: Some("fragment"),
            targets: &[Some(wgpu::ColorTargetState {
                format: Context::render_format(),
                blend: Some(if translucent {
                    wgpu::BlendState::ALPHA_BLENDING
                } else {
                    wgpu::BlendState::REPLACE
                }),
                write_mask: wgpu::ColorWrites::ALL,
            })],
            compilation_options: wgpu::PipelineCompilationOptions::default(),
        }),
        // Scans that end are looked into from behind: both sides are drawn.
        primitive: wgpu::PrimitiveState::default(),
        depth_stencil: Some(wgpu::DepthStencilState {
            format: Context::depth_format(),
            depth_write_enabled: Some(!translucent),
            depth_compare: Some(wgpu::CompareFunction::Less),
            stencil: wgpu::StencilState::default(),
            bias: wgpu::DepthBiasState::default(),
        }),
        multisample: multisample_state(samples),
        multiview_mask: None,
        cache: None,
    })
}

impl Material3d for VertexColours {
    fn create_gpu_data(&self) -> Box<dyn GpuData> {
        Box::new(self.uniforms())
    }

    fn prepare(
        &mut self,
        pass: usize,
        transform: Pose3,
        _: Vec3,
        camera: &mut dyn Camera3d,
        _: &LightCollection,
        _: &ObjectData3d,
        data: &mut dyn GpuData,
        _: u32,
        _: u32,
    ) {
        self.upload();
        let Some(uniforms) = data.as_any_mut().downcast_mut::<Uniforms>() else {
            return;
        };
        let (_, projection) = camera.view_transform_pair(pass);
        let turn: Mat4 = transform.to_mat4();
        let clip = projection * turn;
        let bytes: Vec<u8> = [clip, turn]
            .iter()
            .flat_map(Mat4::to_cols_array)
            .flat_map(f32::to_ne_bytes)
            .collect();
        Context::get().write_buffer(&uniforms.buffer, 0, &bytes);
    }

    fn render(
        &mut self,
        _: usize,
        _: Pose3,
        _: Vec3,
        _: &mut dyn Camera3d,
        _: &LightCollection,
        _: &ObjectData3d,
        mesh: &mut GpuMesh3d,
        _: &mut InstancesBuffer3d,
        data: &mut dyn GpuData,
        pass: &mut wgpu::RenderPass<'_>,
        context: &RenderContext,
    ) {
        if context.phase != RenderPhase::Opaque {
            return;
        }
        let window = [context.viewport_width, context.viewport_height];
        let [left, top, width, height] = inside(self.look.borrow().part, window);
        let (Some(uniforms), Some(colours)) =
            (data.as_any_mut().downcast_mut::<Uniforms>(), &self.colours)
        else {
            return;
        };
        if let (Ok(mut coords), Ok(mut normals), Ok(mut faces)) = (
            mesh.coords().write(),
            mesh.normals().write(),
            mesh.faces().write(),
        ) {
            coords.load_to_gpu();
            normals.load_to_gpu();
            faces.load_to_gpu();
        }
        let (Ok(coords), Ok(normals), Ok(faces)) = (
            mesh.coords().read(),
            mesh.normals().read(),
            mesh.faces().read(),
        ) else {
            return;
        };
        let (Some(coords), Some(normals), Some(faces)) =
            (coords.buffer(), normals.buffer(), faces.buffer())
        else {
            return;
        };
        if width == 0 || height == 0 {
            return;
        }
        pass.set_pipeline(&self.pipeline.get(context.sample_count));
        pass.set_scissor_rect(left, top, width, height);
        pass.set_bind_group(0, &uniforms.group, &[]);
        pass.set_vertex_buffer(0, coords.slice(..));
        pass.set_vertex_buffer(1, normals.slice(..));
        pass.set_vertex_buffer(2, colours.slice(..));
        pass.set_index_buffer(faces.slice(..), VERTEX_INDEX_FORMAT);
        pass.draw_indexed(0..mesh.num_indices(), 0, 0..1);
        pass.set_scissor_rect(0, 0, window[0], window[1]);
    }
}

/// As much of a rectangle as lies in the window.
fn inside([left, top, width, height]: [u32; 4], [w, h]: [u32; 2]) -> [u32; 4] {
    let (left, top) = (left.min(w), top.min(h));
    [left, top, width.min(w - left), height.min(h - top)]
}
