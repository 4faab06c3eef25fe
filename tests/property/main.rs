//! Answers to generated questions, held against each other.
