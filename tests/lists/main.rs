//! Lists of trees, all of them invented: what must come out of each stands in a file beside it.

mod bytes;
mod demands;
mod dirty;
mod handed_out;
mod hostile;
#[path = "../sample.rs"]
mod sample;
mod show;
