//! The season's law and biology.
