//! Build, serve, test and weigh the site.
fn main() {}
