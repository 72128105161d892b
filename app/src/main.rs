//! The page of Ledgerboard.

use leptos::prelude::*;

fn main() {
    leptos::mount::mount_to_body(|| view! { <main id="app"><h1>"Ledgerboard"</h1></main> });
}
