//! Signals and memos that hold anything behind one type, so that Leptos's code for them is there
//! once and not once for every type that the page holds. They are Leptos's own underneath and
//! behave as those do: nothing here tracks, notifies or disposes by itself.

use leptos::prelude::{self as plain, IsDisposed, Read, ReadUntracked, Set, Track, Update};
use std::marker::PhantomData;
use std::ops::Deref;

type Anything = dyn std::any::Any + Send + Sync;

/// Anything, and how to tell whether it is still the same.
struct Held {
    value: Box<Anything>,
    is_same: fn(&Anything, &Anything) -> bool,
}

impl PartialEq for Held {
    fn eq(&self, other: &Self) -> bool {
        (self.is_same)(&*self.value, &*other.value)
    }
}

impl Held {
    fn of<T: 'static>(&self) -> &T {
        self.value.downcast_ref().unwrap_or_else(|| other_type())
    }

    fn of_mut<T: 'static>(&mut self) -> &mut T {
        self.value.downcast_mut().unwrap_or_else(|| other_type())
    }
}

/// Each hold names the one type that it was made with, so that this never comes to pass.
#[cold]
fn other_type() -> ! {
    panic!("a signal holds another type")
}

/// Lets its one type be read.
struct Seen<G, T>(G, PhantomData<fn() -> T>);

impl<G: Deref<Target = Held>, T: 'static> Deref for Seen<G, T> {
    type Target = T;

    fn deref(&self) -> &T {
        self.0.of()
    }
}

/// A hold on a value that tells its readers when it is changed.
pub(crate) struct RwSignal<T>(plain::RwSignal<Held>, PhantomData<fn() -> T>);

impl<T> Clone for RwSignal<T> {
    fn clone(&self) -> Self {
        *self
    }
}
impl<T> Copy for RwSignal<T> {}

#[inline(never)]
fn signal(value: Box<Anything>) -> plain::RwSignal<Held> {
    plain::RwSignal::new(Held { value, is_same: |_, _| false })
}

#[inline(never)]
fn put(signal: plain::RwSignal<Held>, value: Box<Anything>) {
    signal.set(Held { value, is_same: |_, _| false });
}

#[inline(never)]
fn seen(signal: plain::RwSignal<Held>) -> impl Deref<Target = Held> {
    signal.read()
}

#[inline(never)]
fn glanced(signal: plain::RwSignal<Held>) -> Option<impl Deref<Target = Held>> {
    signal.try_read_untracked()
}

#[inline(never)]
fn alter(signal: plain::RwSignal<Held>, change: &mut dyn FnMut(&mut Held)) {
    signal.update(change);
}

impl<T: Send + Sync + 'static> RwSignal<T> {
    /// Holds a value for as long as the present owner lives.
    pub(crate) fn new(value: T) -> Self {
        Self(signal(Box::new(value)), PhantomData)
    }

    /// Reads it for as long as what comes back is there, and is told when it changes.
    pub(crate) fn read(self) -> impl Deref<Target = T> {
        Seen(seen(self.0), PhantomData)
    }

    /// Reads it for as long as what comes back is there.
    pub(crate) fn read_untracked(self) -> impl Deref<Target = T> {
        Seen(glanced(self.0).unwrap_or_else(|| gone()), PhantomData)
    }

    /// Reads it, and is told when it changes.
    pub(crate) fn with<R>(self, read: impl FnOnce(&T) -> R) -> R {
        read(seen(self.0).of())
    }

    /// Reads it once.
    pub(crate) fn with_untracked<R>(self, read: impl FnOnce(&T) -> R) -> R {
        read(&self.read_untracked())
    }

    /// Only asks to be told when it changes.
    pub(crate) fn track(self) {
        self.0.track();
    }

    /// Whether its owner is gone.
    pub(crate) fn is_disposed(self) -> bool {
        self.0.is_disposed()
    }

    /// Puts another value there; nothing happens where its owner is gone.
    pub(crate) fn set(self, value: T) {
        put(self.0, Box::new(value));
    }

    /// Changes the value in place; nothing happens where its owner is gone.
    pub(crate) fn update(self, change: impl FnOnce(&mut T)) {
        let mut change = Some(change);
        alter(self.0, &mut |held| {
            if let Some(change) = change.take() {
                change(held.of_mut());
            }
        });
    }
}

impl<T: Clone + Send + Sync + 'static> RwSignal<T> {
    /// A copy, to be told when it changes.
    pub(crate) fn get(self) -> T {
        self.with(T::clone)
    }

    /// A copy as it is now.
    pub(crate) fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }

    /// A copy as it is now; none where its owner is gone.
    pub(crate) fn try_get_untracked(self) -> Option<T> {
        glanced(self.0).map(|held| held.of::<T>().clone())
    }
}

#[cold]
fn gone() -> ! {
    panic!("what held it is gone")
}

/// A value that is worked out once for all that read it, and tells them only when it comes out
/// otherwise.
pub(crate) struct Memo<T>(plain::Memo<Held>, PhantomData<fn() -> T>);

impl<T> Clone for Memo<T> {
    fn clone(&self) -> Self {
        *self
    }
}
impl<T> Copy for Memo<T> {}

type Work = dyn Fn(Option<&Held>) -> Held + Send + Sync;

#[inline(never)]
fn memo(work: Box<Work>) -> plain::Memo<Held> {
    plain::Memo::new(work)
}

#[inline(never)]
fn worked(memo: plain::Memo<Held>) -> impl Deref<Target = Held> {
    memo.read()
}

#[inline(never)]
fn worked_once(memo: plain::Memo<Held>) -> impl Deref<Target = Held> {
    memo.read_untracked()
}

impl<T: PartialEq + Send + Sync + 'static> Memo<T> {
    /// Works it out when it is first read, and given what came of it the last time.
    pub(crate) fn new(work: impl Fn(Option<&T>) -> T + Send + Sync + 'static) -> Self {
        let is_same =
            |one: &Anything, other: &Anything| one.downcast_ref::<T>() == other.downcast_ref::<T>();
        let work = move |before: Option<&Held>| Held {
            value: Box::new(work(before.map(Held::of))),
            is_same,
        };
        Self(memo(Box::new(work)), PhantomData)
    }

    /// Reads it, and is told when it changes.
    pub(crate) fn with<R>(self, read: impl FnOnce(&T) -> R) -> R {
        read(worked(self.0).of())
    }

    /// Reads it for as long as what comes back is there, and is told when it changes.
    pub(crate) fn read(self) -> impl Deref<Target = T> {
        Seen(worked(self.0), PhantomData)
    }

    /// Reads it once.
    pub(crate) fn with_untracked<R>(self, read: impl FnOnce(&T) -> R) -> R {
        read(worked_once(self.0).of())
    }

    /// Only asks to be told when it changes. It is read for that: what was never worked out follows
    /// nothing.
    pub(crate) fn track(self) {
        drop(worked(self.0));
    }
}

impl<T: Clone + PartialEq + Send + Sync + 'static> Memo<T> {
    /// A copy, to be told when it changes.
    pub(crate) fn get(self) -> T {
        self.with(T::clone)
    }

    /// A copy as it is now.
    pub(crate) fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}
