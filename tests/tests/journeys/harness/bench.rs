//! A tiny server of bad pages, for the checks that show the harness failing.

use std::collections::BTreeMap;
use std::convert::Infallible;
use std::net::Ipv4Addr;
use std::sync::Arc;

use http_body_util::Full;
use hyper::body::{Bytes, Incoming};
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper::{Request, Response};
use hyper_util::rt::TokioIo;
use tokio::net::TcpListener;
use tokio::task::JoinHandle;

use super::Site;

/// Pages by path, served from a port of their own until this value goes.
pub(crate) struct Bench {
    address: String,
    accepting: JoinHandle<()>,
}

struct Pages {
    bodies: BTreeMap<String, String>,
    policy: Option<String>,
}

impl Bench {
    /// One page, at the address itself.
    pub(crate) async fn page(body: &str) -> Bench {
        Bench::pages(&[("", body)], None).await
    }

    /// Several pages by path (without the first slash), all under one content security policy.
    pub(crate) async fn pages(pages: &[(&str, &str)], policy: Option<&str>) -> Bench {
        let bodies = pages.iter().map(|(path, body)| (format!("/{path}"), whole(body))).collect();
        let pages = Arc::new(Pages { bodies, policy: policy.map(str::to_owned) });
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await.expect("a free port");
        let port = listener.local_addr().expect("an address of this machine").port();
        let accepting = tokio::spawn(async move {
            while let Ok((stream, _)) = listener.accept().await {
                let pages = Arc::clone(&pages);
                let answer = service_fn(move |request| {
                    let response = pages.answer(&request);
                    async { Ok::<_, Infallible>(response) }
                });
                let connection =
                    http1::Builder::new().serve_connection(TokioIo::new(stream), answer);
                // A browser that was killed in the middle of a page is no fault of the bench.
                tokio::spawn(async { drop(connection.await) });
            }
        });
        Bench { address: format!("http://127.0.0.1:{port}/"), accepting }
    }
}

impl Site for Bench {
    fn address(&self) -> &str {
        &self.address
    }
}

impl Drop for Bench {
    fn drop(&mut self) {
        self.accepting.abort();
    }
}

impl Pages {
    fn answer(&self, request: &Request<Incoming>) -> Response<Full<Bytes>> {
        // Browsers ask for an icon that no page named; only that is answered with nothing.
        let path = request.uri().path();
        let (status, body) = match self.bodies.get(path) {
            Some(body) => (200, body.clone()),
            None if path == "/favicon.ico" => (204, String::new()),
            None => (404, String::new()),
        };
        let mut response =
            Response::builder().status(status).header("content-type", "text/html; charset=utf-8");
        if let Some(policy) = &self.policy {
            response = response.header("content-security-policy", policy);
        }
        response.body(Full::from(body)).expect("a policy is a plain header")
    }
}

// What a page needs so that only the fault put into its body is found in it.
fn whole(body: &str) -> String {
    format!(
        "<!doctype html><html lang=en><meta charset=utf-8><title>Bench</title>\
         <meta name=viewport content='width=device-width, initial-scale=1'>\
         <main><h1>Bench</h1>{body}</main></html>"
    )
}
