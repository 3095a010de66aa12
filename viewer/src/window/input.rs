//! What keys and mouse ask for.

use super::focus::Focus;
use super::opening::set_background;
use super::{Content, Running, keys, queue};
use crate::command::{Command, Layer};
use kiss3d::event::{Action, Key, Modifiers, MouseButton, WindowEvent};
use messages::text;
use nalgebra::Point2;

impl Running {
    pub(super) fn take_events(&mut self) {
        let events: Vec<WindowEvent> = self.window.events().iter().map(|e| e.value).collect();
        // Lists unfold, and texts are written, over several frames.
        let unfolds = matches!(self.content, Content::Desk | Content::List);
        let due = if unfolds || self.dialog.is_some() {
            24
        } else {
            2
        };
        for event in events {
            self.due = due;
            self.take(event);
        }
    }

    pub(super) fn take(&mut self, event: WindowEvent) {
        let over_panel = self.window.is_egui_capturing_mouse();
        match event {
            WindowEvent::Close => self.closing = true,
            WindowEvent::Key(key, Action::Press, modifiers) => self.press(key, modifiers),
            WindowEvent::CursorPos(x, y, _) => {
                let to = Point2::new(x, y);
                let by = to - self.pointer;
                self.pointer = to;
                self.point(by.x, by.y);
            }
            WindowEvent::Scroll(_, y, _) if !over_panel => {
                self.ask(Command::Magnify((y * 0.015).exp()));
            }
            WindowEvent::MouseButton(button, Action::Press, _) if !over_panel => {
                self.held = Some((button, self.pointer));
            }
            WindowEvent::MouseButton(button, Action::Release, _) => {
                const STILL_PX: f64 = 4.0;
                let held = self.held.take();
                let clicked = held.is_some_and(|(down, at)| {
                    down == button && (at - self.pointer).norm() < STILL_PX
                });
                if let Content::Case(app, _) = &mut self.content
                    && clicked
                    && button == MouseButton::Button1
                {
                    app.click(&self.pointer);
                }
            }
            _ => {}
        }
    }

    pub(super) fn point(&mut self, right: f64, down: f64) {
        let Content::Case(app, _) = &mut self.content else {
            return;
        };
        let Some((button, pressed_at)) = self.held else {
            return;
        };
        match button {
            _ if !app.canvas.holds(&pressed_at) => {}
            MouseButton::Button1 => app.act(Command::Turn(right, down)),
            MouseButton::Button2 | MouseButton::Button3 => app.act(Command::Shift(right, down)),
            _ => {}
        }
    }

    pub(super) fn press(&mut self, key: Key, modifiers: Modifiers) {
        let control = modifiers.contains(Modifiers::Control);
        let shift = modifiers.contains(Modifiers::Shift);
        match key {
            Key::Q if control => self.closing = true,
            // Its keys and letters are taken in their order as it is drawn.
            _ if self.dialog.is_some() => {}
            Key::F9 => {
                self.settings.dark = !self.settings.dark;
                set_background(&mut self.window, self.settings.dark);
            }
            Key::O if control && shift => self.choose_folder(),
            Key::O if control => self.choose_scans(),
            _ => match self.content {
                Content::Desk if key == Key::Escape && self.queue.is_some() => self.show_list(),
                Content::Loading(_) if key == Key::Escape => self.cancel(),
                Content::Desk | Content::Loading(_) => {}
                Content::List if key == Key::F5 => self.serve_list(queue::Wish::ReadAgain),
                // Its other keys are taken in their order as it is drawn.
                Content::List => {
                    self.press_for_result(key);
                }
                Content::Failed(_) | Content::Case(..) => self.press_on_case(key, modifiers),
            },
        }
    }

    /// What a key asks for over an impression, or where there is none to see.
    pub(super) fn press_on_case(&mut self, key: Key, modifiers: Modifiers) {
        if self.focus.takes(key, modifiers) || self.press_for_result(key) {
            return;
        }
        if self.press_on_walk(key) {
            return;
        }
        let is_plain = !modifiers.contains(Modifiers::Control);
        if let Some(turn) = keys::turn(key).filter(|_| self.focus == Focus::Picture && is_plain) {
            self.ask(turn);
            return;
        }
        match key {
            Key::S if !modifiers.contains(Modifiers::Control) => self.screenshot = true,
            Key::R | Key::F5 => self.check_again(),
            _ => {
                if let Some(command) = keys::command(key, modifiers) {
                    self.ask(command);
                }
            }
        }
    }

    pub(super) fn ask(&mut self, command: Command) {
        let most = self.most_text_size();
        if let Content::Case(app, _) = &mut self.content {
            app.act(command);
            if matches!(command, Command::TextSize(_)) && app.text_size > most {
                app.text_size = most;
                app.notice = text!(app.language, "said-no-room");
            }
            self.settings.text_size = app.text_size;
            self.settings.strip = app.shows(Layer::Strip);
        }
    }
}
