//! Colours of a picture: viridis for cover, grey where it is not known, each
//! darker where the surface turns away. One table of 256 colours keeps the files
//! small; ordered dithering hides its steps.

use std::io;

/// Colour where cover is not known, as in the cover map.
const NEUTRAL: f64 = 176.0;
const GREYS: usize = 31;
const COLOURS: usize = 28;
const SHADES: usize = 8;
/// Nothing is drawn here.
pub const PAPER: u8 = 0;
/// How bright a surface is that turns wholly away.
const DARKEST: f64 = 0.4;

/// Thresholds of ordered dithering (Bayer 1973), sixteenths.
const BAYER: [[u8; 4]; 4] = [[0, 8, 2, 10], [12, 4, 14, 6], [3, 11, 1, 9], [15, 7, 13, 5]];

/// Index of the colour for a place of the picture.
///
/// `facing` is the cosine between the surface and whoever looks; `share` is 0 to
/// 1 along the scale of cover, `None` where cover is not known.
pub fn index(facing: f32, share: Option<f32>, [x, y]: [usize; 2]) -> u8 {
    let threshold = |x: usize, y: usize| (f32::from(BAYER[y % 4][x % 4]) + 0.5) / 16.0;
    let step = |value: f32, steps: usize, at: f32| {
        ((value.clamp(0.0, 1.0) * (steps - 1) as f32 + at) as usize).min(steps - 1)
    };
    let facing = facing.abs();
    let place = match share {
        None => 1 + step(facing, GREYS, threshold(x, y)),
        Some(share) => {
            let shade = step(facing, SHADES, threshold(x, y));
            // Turned, so that steps of colour and shade do not fall together.
            let colour = step(share, COLOURS, threshold(y + 1, x + 2));
            1 + GREYS + colour * SHADES + shade
        }
    };
    place as u8
}

/// The table of colours, three bytes each.
fn table() -> Vec<u8> {
    let brightness =
        |step: usize, steps: usize| DARKEST + (1.0 - DARKEST) * step as f64 / (steps - 1) as f64;
    let mut table = vec![255; 3];
    for shade in 0..GREYS {
        table.extend([(NEUTRAL * brightness(shade, GREYS)).round() as u8; 3]);
    }
    for colour in 0..COLOURS {
        let share = colour as f64 / (COLOURS - 1) as f64;
        let bright = colorous::VIRIDIS.eval_continuous(share).as_array();
        for shade in 0..SHADES {
            table.extend(bright.map(|c| (f64::from(c) * brightness(shade, SHADES)).round() as u8));
        }
    }
    table
}

/// A picture as the bytes of a PNG file.
pub fn png(size: [usize; 2], pixels: &[u8]) -> Result<Vec<u8>, io::Error> {
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, size[0] as u32, size[1] as u32);
    encoder.set_color(png::ColorType::Indexed);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.set_palette(table());
    encoder.set_compression(png::Compression::Balanced);
    encoder.set_filter(png::Filter::NoFilter);
    let mut writer = encoder.write_header()?;
    writer.write_image_data(pixels)?;
    writer.finish()?;
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_place_has_a_colour_of_the_table() {
        let colours = table().len() / 3;
        assert_eq!(colours, 1 + GREYS + COLOURS * SHADES);
        assert!(colours <= 256);
        for share in [None, Some(-1.0), Some(0.0), Some(0.5), Some(1.0), Some(9.0)] {
            for facing in [-1.0, 0.0, 0.3, 1.0] {
                for at in 0..16 {
                    let index = usize::from(index(facing, share, [at % 4, at / 4]));
                    assert!((1..colours).contains(&index));
                }
            }
        }
    }

    // The ends of the published viridis table, seen face on.
    #[test]
    fn the_scale_ends_in_the_colours_of_viridis() {
        let table = table();
        let rgb = |share| {
            let at = usize::from(index(1.0, Some(share), [1, 1])) * 3;
            [table[at], table[at + 1], table[at + 2]]
        };
        assert_eq!(rgb(0.0), [68, 1, 84]);
        assert_eq!(rgb(1.0), [253, 231, 37]);
    }
}
