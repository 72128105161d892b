//! Asks a host for one file, over plain HTTP.

use std::time::Duration;

use anyhow::{Context, Result, ensure};
use http_body_util::{BodyExt, Empty, Limited};
use hyper::body::Bytes;
use hyper::{Request, Uri, header};
use hyper_util::rt::TokioIo;
use tokio::net::TcpStream;

use super::Answer;

/// For one file, over whatever line there is.
const PATIENCE: Duration = Duration::from_secs(30);
/// Far more than any file of ours.
const MOST: usize = 64 * 1024 * 1024;

/// Asks for the file at `address` below `site`. No redirect is followed: no worker would.
///
/// # Errors
/// If the host can't be reached, or breaks off.
pub(super) fn get(site: &Uri, address: &str, encoding: &str) -> Result<Answer> {
    let threads = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    threads.block_on(async {
        let answer = tokio::time::timeout(PATIENCE, ask(site, address, encoding)).await;
        let answer = answer.unwrap_or_else(|_| Err(anyhow::anyhow!("no answer in {PATIENCE:?}")));
        answer.with_context(|| format!("{site}{address}"))
    })
}

async fn ask(site: &Uri, address: &str, encoding: &str) -> Result<Answer> {
    let host = site.host().context("the address names no host")?;
    let port = site.port_u16().unwrap_or(80);
    let stream = TcpStream::connect((host.trim_matches(['[', ']']), port)).await?;
    let (mut sender, connection) =
        hyper::client::conn::http1::handshake(TokioIo::new(stream)).await?;
    let connection = tokio::spawn(connection);

    let path = site.path();
    ensure!(path.ends_with('/'), "{path} is no folder");
    let request = Request::get(format!("{path}{}", address.trim_start_matches("./")))
        .header(header::HOST, site.authority().map_or(host, |authority| authority.as_str()))
        .header(header::ACCEPT_ENCODING, encoding)
        .header(header::CACHE_CONTROL, "no-cache")
        .body(Empty::<Bytes>::new())?;
    let (head, body) = sender.send_request(request).await?.into_parts();
    let text = |value: &header::HeaderValue| String::from_utf8_lossy(value.as_bytes()).into_owned();
    let headers =
        head.headers.iter().map(|(name, value)| (name.to_string(), text(value))).collect();
    let body = Limited::new(body, MOST).collect().await;
    let body = body.map_err(|error| anyhow::anyhow!("it breaks off: {error}"))?;
    connection.abort();
    Ok(Answer { status: head.status.as_u16(), headers, body: body.to_bytes().into() })
}
