//! Working as it comes together: each step is worked once, and gives the answer what it comes to.

use super::{Expr, Source, Step};
use crate::measure::{Length, Measure, Unit};
use crate::words::{Amount, Phrase};

/// Steps in the order worked.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Steps(pub Vec<Step>);

impl Steps {
    /// Adds a step and gives what it comes to; none where its kinds don't fit or it is past what
    /// is held, and then nothing is added.
    #[inline(never)]
    pub fn amount(
        &mut self,
        key: &str,
        name: &'static Phrase,
        source: Option<&'static Source>,
        expr: Expr,
    ) -> Option<Amount> {
        let amount = expr.value()?.amount()?;
        self.0.push(Step { key: key.to_owned(), name: name.into(), expr, source });
        Some(amount)
    }

    /// One that comes to a length.
    pub fn length(
        &mut self,
        key: &str,
        name: &'static Phrase,
        source: Option<&'static Source>,
        expr: Expr,
    ) -> Option<Length> {
        match self.amount(key, name, source, expr)? {
            Amount::Length(length) => Some(length),
            _ => None,
        }
    }

    /// One that comes to a quantity told in `unit`.
    pub fn measure(
        &mut self,
        key: &str,
        name: &'static Phrase,
        source: Option<&'static Source>,
        unit: &'static Unit,
        expr: Expr,
    ) -> Option<Measure> {
        match self.amount(key, name, source, expr.told_in(unit))? {
            Amount::Measure(measure) => Some(measure),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::unit::{PLF, PSF};
    use crate::sheet::READ;

    #[test]
    fn a_step_that_comes_to_nothing_that_is_held_is_not_added() {
        let mut steps = Steps::default();
        let load = Expr::measure(Measure::whole(&PSF, 30));
        let wide = Expr::length(Length::inches(144, 1));
        let line = steps.measure("line", &READ, None, &PLF, load.clone().times(wide));
        assert_eq!(line, Some(Measure::whole(&PLF, 360)));
        assert_eq!(steps.measure("line", &READ, None, &PLF, load.clone()), None);
        assert_eq!(steps.length("line", &READ, None, load), None, "a load is no length");
        let over = Expr::count(1).over(Expr::count(0));
        assert_eq!(steps.amount("line", &READ, None, over), None);
        assert!(steps.0.len() <= 2);
    }
}
