//! A long list takes seconds to plan. Where somebody waits, who may stop it, the planner rests each time it has done so much
//! work, and goes on when it is asked to: it is a future that only [`InSteps`] wakes. The plan is the same either way.

use core::cell::Cell;
use core::fmt;
use core::future::{Future, poll_fn};
use core::pin::{Pin, pin};
use core::task::{Context, Poll, Waker};
use std::rc::Rc;

/// How much may be done until the next rest. A piece of work is about what it takes to look at one tree: half a microsecond.
#[derive(Clone, Debug)]
pub struct Rests {
    left: Rc<Cell<usize>>,
}

impl Rests {
    fn after(work: usize) -> Self {
        Self {
            left: Rc::new(Cell::new(work)),
        }
    }

    /// Says that so much was done, and rests where it was enough.
    pub async fn done(&self, work: usize) {
        self.left.set(self.left.get().saturating_sub(work));
        poll_fn(|_| match self.left.get() {
            0 => Poll::Pending,
            _ => Poll::Ready(()),
        })
        .await;
    }
}

/// Work that is done a step at a time.
pub struct InSteps<T> {
    rests: Rests,
    work: Pin<Box<dyn Future<Output = T>>>,
}

impl<T> fmt::Debug for InSteps<T> {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.debug_struct("InSteps").finish_non_exhaustive()
    }
}

impl<T> InSteps<T> {
    /// Nothing is done before the first step.
    ///
    /// ```
    /// let mut sum = calc_plan::InSteps::of(|rests| async move {
    ///     let mut sum = 0;
    ///     for tree in 1..=4 {
    ///         sum += tree;
    ///         rests.done(1).await;
    ///     }
    ///     sum
    /// });
    /// assert_eq!(sum.step(3), None);
    /// assert_eq!(sum.step(3), Some(10));
    /// ```
    pub fn of<W: Future<Output = T> + 'static>(work: impl FnOnce(Rests) -> W) -> Self {
        let rests = Rests::after(0);
        Self {
            work: Box::pin(work(rests.clone())),
            rests,
        }
    }

    /// Does so many pieces of work more, one at least; gives what came out once all is done. Nothing may be asked for then.
    pub fn step(&mut self, work: usize) -> Option<T> {
        self.rests.left.set(work.max(1));
        match self
            .work
            .as_mut()
            .poll(&mut Context::from_waker(Waker::noop()))
        {
            Poll::Ready(done) => Some(done),
            Poll::Pending => None,
        }
    }
}

/// All of it without a rest.
pub(crate) fn at_once<T>(work: impl AsyncFnOnce(&Rests) -> T) -> T {
    let rests = Rests::after(usize::MAX);
    let mut work = pin!(work(&rests));
    loop {
        if let Poll::Ready(done) = work.as_mut().poll(&mut Context::from_waker(Waker::noop())) {
            return done;
        }
        rests.left.set(usize::MAX);
    }
}
