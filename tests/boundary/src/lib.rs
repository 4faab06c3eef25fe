//! Nothing here: the tests of the boundary stand in `tests/`.
