//! Fewest boards by weights: no way of cutting gets more than one board's weight out of a board.
//!
//! A weight is a dual feasible function: lengths that fit into one board together weigh no more
//! than the board. Source: Fekete and Schepers, "New classes of fast lower bounds for bin packing
//! problems", Mathematical Programming 91 (2001), and Carlier, Clautiaux and Moukrim, "New
//! reduction procedures and lower bounds for the two-dimensional bin packing problem", Computers
//! & Operations Research 34 (2007), from memory; a test tries each against all ways of cutting.

/// One way of weighing lengths.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Weight {
    /// The length itself.
    Length,
    /// What leaves less than this over counts whole, what is shorter than this not at all.
    Over(i64),
    /// In whole parts of a board, so many and one.
    Parts(i64),
    /// In whole steps of this length, long pieces by what they leave.
    Steps(i64),
}

impl Weight {
    /// What a whole board weighs.
    pub(super) fn board(self, stock: i64) -> i64 {
        match self {
            Self::Length | Self::Over(_) => stock,
            Self::Parts(parts) => stock * parts,
            Self::Steps(step) => 2 * (stock / step),
        }
    }

    /// What a length weighs.
    pub(super) fn of(self, length: i64, stock: i64) -> i64 {
        match self {
            Self::Length => length,
            Self::Over(short) if length > stock - short => stock,
            Self::Over(short) if length < short => 0,
            Self::Over(_) => length,
            Self::Parts(parts) => {
                let scaled = (parts + 1) * length;
                if scaled % stock == 0 { length * parts } else { scaled / stock * stock }
            }
            Self::Steps(step) => match (2 * length).cmp(&stock) {
                std::cmp::Ordering::Greater => 2 * (stock / step - (stock - length) / step),
                std::cmp::Ordering::Equal => stock / step,
                std::cmp::Ordering::Less => 2 * (length / step),
            },
        }
    }
}

/// The ways of weighing that tell something of these lengths.
pub(super) fn weights(lengths: &[i64], stock: i64) -> Vec<Weight> {
    let mut all = vec![Weight::Length];
    all.extend((1..=16).map(Weight::Parts));
    for &length in lengths {
        if 2 * length <= stock {
            all.push(Weight::Over(length));
        }
        all.push(Weight::Steps(length));
    }
    all
}
