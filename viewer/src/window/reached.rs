//! Every control of the window lies inside it and is reached by Tab, at every
//! size of screen and text: asked of the layout itself, without a screen.

use super::layout::{Layout, most_text_size};
use super::{decide, focus, overlay, panels, strip};
use crate::app::App;
use crate::opened::open;
use arguments::Source;
use kiss3d::egui::{Context, Event, Id, Key, Modifiers, Pos2, RawInput, Rect, Vec2};
use messages::{Language, text};
use std::collections::BTreeSet;
use std::path::Path;

/// A frame of the window with a case in it, and what was pressed before; whether the
/// picture is named for screen readers, with the chosen finding.
fn frame(ctx: &Context, app: &mut App, size: [f64; 2], text_size: f64, pressed: &[Key]) -> bool {
    let layout = Layout::of(size[0], size[1], text_size, true);
    (app.canvas, app.strip_area) = (layout.picture, layout.strip);
    let key = |&key: &Key| Event::Key {
        key,
        physical_key: None,
        pressed: true,
        repeat: false,
        modifiers: Modifiers::NONE,
    };
    let input = RawInput {
        screen_rect: Some(Rect::from_min_size(
            Pos2::ZERO,
            Vec2::new(size[0] as f32, size[1] as f32),
        )),
        events: pressed.iter().map(key).collect(),
        ..RawInput::default()
    };
    ctx.begin_pass(input);
    panels::set_style(ctx, text_size, false);
    overlay::draw(ctx, app, 1.0, text_size, None);
    focus::picture(ctx, app, 1.0);
    if let Some(area) = &layout.strip {
        strip::draw(ctx, app, area, 1.0, text_size);
    }
    panels::draw(ctx, app, &layout, (1.0, text_size));
    let picture = text!(app.language, "window-picture-name");
    decide::bar(ctx, app, Some((12, 345)), 1.0);
    let mut output = ctx.end_pass();
    output.textures_delta.clear();
    let update = output.platform_output.accesskit_update;
    update.is_some_and(|update| {
        let mut names = update.nodes.iter().filter_map(|(_, node)| node.label());
        names.any(|name| name.starts_with(&picture) && name.contains("F1"))
    })
}

/// What can be clicked or have the focus, and where.
fn controls(ctx: &Context) -> Vec<(Id, Rect)> {
    ctx.viewport(|viewport| {
        let layers = viewport.prev_pass.widgets.layers();
        let all = layers.flat_map(|(_, widgets)| widgets.iter());
        let focusable = all.filter(|widget| widget.sense.is_focusable() && widget.enabled);
        focusable
            .map(|widget| (widget.id, widget.interact_rect))
            .collect()
    })
}

#[test]
fn tab_reaches_every_control_and_all_lie_inside_the_window() {
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("../test-meshes/demo/case.toml");
    let out = tempfile::tempdir().unwrap();
    let source = Source {
        out: Some(out.path().to_owned()),
        ..Source::of(&demo)
    };
    let canvas = Layout::of(1280.0, 800.0, 1.0, true).picture;
    let mut app = App::new(open(&source, &|_| {}).unwrap(), canvas);
    let sizes = [
        ([1280.0, 800.0], 1.0),
        ([1280.0, 800.0], 1.5),
        ([1920.0, 1080.0], 1.2),
        ([800.0, 500.0], most_text_size(800.0, 500.0)),
    ];
    let in_languages = |size| Language::ALL.map(|language| (size, language));
    for ((size, text_size), language) in sizes.into_iter().flat_map(in_languages) {
        app.language = language;
        let ctx = Context::default();
        ctx.enable_accesskit();
        let named = [0; 3].map(|_| frame(&ctx, &mut app, size, text_size, &[]));
        assert!(named[2], "the picture has no name");
        let all = controls(&ctx);
        assert!(all.len() > 25, "{}", all.len());
        let window =
            Rect::from_min_size(Pos2::ZERO, Vec2::new(size[0] as f32, size[1] as f32)).expand(1.0);
        for (_, rect) in &all {
            // What is scrolled out of sight has no place on the screen.
            assert!(
                !rect.is_positive() || window.contains_rect(*rect),
                "{size:?}, {language}: {rect:?}"
            );
        }
        let mut reached = BTreeSet::new();
        for _ in 0..2 * all.len() {
            frame(&ctx, &mut app, size, text_size, &[Key::Tab]);
            frame(&ctx, &mut app, size, text_size, &[]);
            reached.extend(ctx.memory(|memory| memory.focused()).map(|id| id.value()));
        }
        let missed: Vec<_> = all
            .iter()
            .filter(|(id, _)| !reached.contains(&id.value()))
            .collect();
        assert!(
            missed.is_empty(),
            "{size:?}, text {text_size}, {language}: {missed:?}"
        );
    }
}
