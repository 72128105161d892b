//! What the page is looked at with: sizes, touch, colour scheme, size of text.

use serde_json::json;
use thirtyfour::cdp::Cdp;

use super::Told;

/// The devices that journeys are made on. Sizes are in CSS pixels.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Device {
    /// 390 x 844, two device pixels to one, touch.
    Phone,
    /// 320 x 568, two device pixels to one, touch: the narrowest that the site promises.
    SmallPhone,
    /// 1280 x 800 with a keyboard and a mouse.
    Desk,
}

/// The colour scheme that the person asked their device for.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Scheme {
    /// Dark ink on light ground.
    Light,
    /// Light ink on dark ground.
    Dark,
}

impl Device {
    /// Width and height.
    pub(crate) fn size(self) -> (u32, u32) {
        match self {
            Device::Phone => (390, 844),
            Device::SmallPhone => (320, 568),
            Device::Desk => (1280, 800),
        }
    }

    /// Whether it is used with a finger.
    pub(crate) fn has_touch(self) -> bool {
        self != Device::Desk
    }

    /// Without a screen Chromium has neither mouse nor finger; the finger is emulated for a tab,
    /// the mouse has to be told of at the start (2: it hovers, 4: it is fine).
    pub(super) fn flags(self) -> &'static [&'static str] {
        match self {
            Device::Phone | Device::SmallPhone => &[],
            Device::Desk => &["--blink-settings=primaryHoverType=2,availableHoverTypes=2,\
                 primaryPointerType=4,availablePointerTypes=4"],
        }
    }

    /// Makes the current tab look like this device; lasts as long as the tab.
    pub(super) async fn apply(self, cdp: &Cdp) -> Told<()> {
        let (width, height) = self.size();
        let touch = self.has_touch();
        let metrics = json!({
            "width": width,
            "height": height,
            "deviceScaleFactor": if touch { 2 } else { 1 },
            "mobile": touch,
        });
        cdp.send_raw("Emulation.setDeviceMetricsOverride", metrics).await?;
        let fingers = json!({ "enabled": touch, "maxTouchPoints": 5 });
        cdp.send_raw("Emulation.setTouchEmulationEnabled", fingers).await?;
        Ok(())
    }
}

impl Scheme {
    pub(super) async fn apply(self, cdp: &Cdp) -> Told<()> {
        let value = match self {
            Scheme::Light => "light",
            Scheme::Dark => "dark",
        };
        let features = json!({ "features": [{ "name": "prefers-color-scheme", "value": value }] });
        cdp.send_raw("Emulation.setEmulatedMedia", features).await?;
        Ok(())
    }
}

/// Sets the size of text that the person asked their browser for, in percent of the usual.
///
/// This is the browser's own setting, so `rem`, `em`, and media queries in them follow it as on a
/// real device, and text in `px` stays as it is, as it does for a real person.
pub(super) async fn set_text_percent(cdp: &Cdp, percent: u32) -> Told<()> {
    let sizes = json!({ "standard": 16 * percent / 100, "fixed": 13 * percent / 100 });
    cdp.send_raw("Page.setFontSizes", json!({ "fontSizes": sizes })).await?;
    Ok(())
}
