//! Published cases, then laws.
