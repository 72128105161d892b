//! The finger, and on the desk the mouse.

use serde::Deserialize;
use serde_json::json;

use super::page::Page;
use super::spot::Spot;

#[derive(Deserialize)]
struct Point {
    x: f64,
    y: f64,
}

impl Page {
    /// Touches the middle of the spot (on the desk: clicks it), scrolled into view when it has to
    /// be. Gives up when it is disabled, still moving, or covered at that point by another
    /// element: a person's finger would not reach it either.
    #[track_caller]
    pub(crate) fn tap(&self, spot: impl Into<Spot>) -> impl Future<Output = ()> {
        let spot = spot.into();
        self.step(format!("tap {spot}"), async move {
            let find = include_str!("in_page/tap_point.js");
            let Point { x, y } = self.ask_patiently(find, json!([spot])).await?;
            let cdp = self.cdp().await?;
            if self.session.device.has_touch() {
                let down = json!({ "type": "touchStart", "touchPoints": [{ "x": x, "y": y }] });
                let up = json!({ "type": "touchEnd", "touchPoints": [] });
                cdp.send_raw("Input.dispatchTouchEvent", down).await?;
                cdp.send_raw("Input.dispatchTouchEvent", up).await?;
            } else {
                for kind in ["mouseMoved", "mousePressed", "mouseReleased"] {
                    let button = if kind == "mouseMoved" { "none" } else { "left" };
                    let event =
                        json!({ "type": kind, "x": x, "y": y, "button": button, "clickCount": 1 });
                    cdp.send_raw("Input.dispatchMouseEvent", event).await?;
                }
            }
            Ok(())
        })
    }
}
