//! The keyboard: the phone's, which hands over text, and the desk's, which sends keys.

use serde_json::{Value, json};

use super::page::Page;
use super::spot::Spot;
use super::{Told, Trouble};

// Bits of the debugging protocol's `modifiers`.
const MODIFIERS: [(&str, u8); 4] = [("Alt", 1), ("Control", 2), ("Meta", 4), ("Shift", 8)];

// Name, virtual key code, and the text that the key writes.
const NAMED: [(&str, u16, &str); 14] = [
    ("Tab", 9, ""),
    ("Enter", 13, "\r"),
    ("Escape", 27, ""),
    ("Space", 32, " "),
    ("PageUp", 33, ""),
    ("PageDown", 34, ""),
    ("End", 35, ""),
    ("Home", 36, ""),
    ("ArrowLeft", 37, ""),
    ("ArrowUp", 38, ""),
    ("ArrowRight", 39, ""),
    ("ArrowDown", 40, ""),
    ("Backspace", 8, ""),
    ("Delete", 46, ""),
];

impl Page {
    /// Presses a key, or keys joined by a plus: `Tab`, `Shift+Tab`, `Control+a`, `ArrowDown`.
    #[track_caller]
    pub(crate) fn press(&self, keys: &str) -> impl Future<Output = ()> {
        self.step(format!("press {keys}"), async move { self.send_key(keys).await })
    }

    /// Types into whatever has the focus. A phone's keyboard hands over text without telling
    /// which key it was, so a page that listens for keys only is found out there.
    #[track_caller]
    pub(crate) fn type_keys(&self, text: &str) -> impl Future<Output = ()> {
        self.step(format!("type `{text}`"), async move { self.send_text(text).await })
    }

    /// Taps a field, and puts `text` in place of what it holds.
    #[track_caller]
    pub(crate) fn enter(&self, spot: impl Into<Spot>, text: &str) -> impl Future<Output = ()> {
        let spot = spot.into();
        let tap = self.tap(spot.clone());
        self.step(format!("enter `{text}` in {spot}"), async move {
            tap.await;
            let select = "(spot) => { const input = one(spot); \
                if (document.activeElement !== input) throw new Error('a tap does not focus it'); \
                input.select(); }";
            let () = self.ask_patiently(select, json!([spot])).await?;
            if text.is_empty() {
                self.send_key("Backspace").await
            } else {
                self.send_text(text).await
            }
        })
    }

    async fn send_text(&self, text: &str) -> Told<()> {
        for letter in text.chars().map(String::from) {
            if self.session.device.has_touch() {
                let cdp = self.cdp().await?;
                cdp.send_raw("Input.insertText", json!({ "text": letter })).await?;
            } else {
                self.send_key(if letter == " " { "Space" } else { &letter }).await?;
            }
        }
        Ok(())
    }

    async fn send_key(&self, keys: &str) -> Told<()> {
        let event = key_event(keys)?;
        let cdp = self.cdp().await?;
        for kind in ["keyDown", "keyUp"] {
            let mut event = event.clone();
            event["type"] = json!(kind);
            if kind == "keyUp" {
                event["text"] = json!("");
            }
            cdp.send_raw("Input.dispatchKeyEvent", event).await?;
        }
        Ok(())
    }
}

fn key_event(keys: &str) -> Told<Value> {
    // A plus by itself is a key, not a joint.
    let (held, key) = match keys.rsplit_once('+') {
        Some((held, key)) if !key.is_empty() => (held, key),
        _ => ("", keys),
    };
    let mut modifiers = 0;
    for name in held.split('+').filter(|name| !name.is_empty()) {
        let known = MODIFIERS.iter().find(|(modifier, _)| *modifier == name);
        modifiers |= known.ok_or_else(|| Trouble::from(format!("no key holds {name}")))?.1;
    }
    let (code, text) = match NAMED.iter().find(|(name, ..)| *name == key) {
        Some((_, code, text)) => (*code, *text),
        None if key.chars().count() == 1 => {
            let letter = key.chars().next().map_or('\0', |letter| letter.to_ascii_uppercase());
            // Only letters and digits have a code that equals their character.
            (if letter.is_ascii_alphanumeric() { letter as u16 } else { 0 }, key)
        }
        None => return Err(Trouble::from(format!("no key is called {key}"))),
    };
    // With Control held a letter is an order, not text.
    let text = if modifiers & 0b0111 == 0 { text } else { "" };
    let name = if key == "Space" { " " } else { key };
    Ok(json!({
        "key": name, "code": physical(key), "text": text,
        "windowsVirtualKeyCode": code, "modifiers": modifiers,
    }))
}

fn physical(key: &str) -> String {
    match key.chars().next() {
        Some(letter) if key.len() == 1 && letter.is_ascii_alphabetic() => {
            format!("Key{}", letter.to_ascii_uppercase())
        }
        Some(digit) if key.len() == 1 && digit.is_ascii_digit() => format!("Digit{digit}"),
        _ if key.chars().count() == 1 => String::new(),
        _ => key.to_owned(),
    }
}
