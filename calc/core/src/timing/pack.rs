//! The climate places as a small file.
