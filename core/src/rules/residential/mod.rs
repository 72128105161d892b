//! Clauses of the residential code, as far as raising a ceiling needs them.

pub mod ceiling_height;
