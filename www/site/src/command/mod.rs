//! A file a command; what several of them need stands here.

pub(crate) mod answer;
pub(crate) mod build;
pub(crate) mod list;
pub(crate) mod plan;
pub(crate) mod question;
pub(crate) mod serve;
pub(crate) mod settings;
pub(crate) mod year;

/// Says what is being done, on the error stream, unless asked to be quiet.
pub(crate) fn speaker(quiet: bool) -> impl Fn(&str) {
    move |line| {
        if !quiet {
            crate::terminal::tell(line);
        }
    }
}
