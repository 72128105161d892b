//! The body of an answer: all of a file, or half of it and then nothing more.

use std::io;
use std::pin::Pin;
use std::task::{Context, Poll};

use hyper::body::{Body, Bytes, Frame, SizeHint};

/// Bytes on their way.
#[derive(Debug)]
pub(super) struct Sent {
    rest: Bytes,
    end: End,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum End {
    /// All of it was sent.
    Whole,
    /// The line goes dead, but not before what was sent so far is on its way.
    Soon,
    Now,
}

impl Sent {
    pub(super) fn whole(content: impl Into<Bytes>) -> Self {
        Self { rest: content.into(), end: End::Whole }
    }

    /// Half of what was to be sent. Its length has to be stated, or nobody would miss the rest.
    pub(super) fn cut(self) -> Self {
        Self { rest: self.rest.slice(..self.rest.len() / 2), end: End::Soon }
    }

    pub(super) fn bytes(&self) -> &[u8] {
        &self.rest
    }
}

impl Body for Sent {
    type Data = Bytes;
    type Error = io::Error;

    fn poll_frame(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
    ) -> Poll<Option<Result<Frame<Bytes>, io::Error>>> {
        if !self.rest.is_empty() {
            let rest = std::mem::take(&mut self.rest);
            return Poll::Ready(Some(Ok(Frame::data(rest))));
        }
        match self.end {
            End::Whole => Poll::Ready(None),
            End::Soon => {
                self.end = End::Now;
                context.waker().wake_by_ref();
                Poll::Pending
            }
            End::Now => Poll::Ready(Some(Err(io::ErrorKind::ConnectionReset.into()))),
        }
    }

    fn is_end_stream(&self) -> bool {
        self.end == End::Whole && self.rest.is_empty()
    }

    fn size_hint(&self) -> SizeHint {
        match self.end {
            End::Whole => SizeHint::with_exact(self.rest.len() as u64),
            _ => SizeHint::default(),
        }
    }
}
