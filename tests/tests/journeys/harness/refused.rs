//! For steps that must fail.

use std::panic::AssertUnwindSafe;

use futures_util::FutureExt;

/// The words with which a step gave up.
///
/// # Panics
/// When it did not give up.
pub(crate) async fn refused<T>(step: impl Future<Output = T>) -> String {
    match AssertUnwindSafe(step).catch_unwind().await {
        Ok(_) => panic!("this step must fail, and did not"),
        Err(panic) => *panic.downcast::<String>().expect("a step fails with words"),
    }
}
