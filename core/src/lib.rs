//! Ledgerboard's calculators.
