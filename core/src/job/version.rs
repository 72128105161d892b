//! Two versions of one number, left by a merge of two phones that both changed it. One is in use:
//! links go to it, and its title stayed. A person looks at what differs and chooses.

use super::edit::Edit;
use super::mark::Mark;
use super::merge::{is_other_title, other_title};
use super::site::Job;

/// The number in use of which this is the other version; none where nobody can tell. A title that a
/// person gave it since makes it a number of its own.
///
/// Both phones may have changed the title too: then it is the only number of its kind in its room.
pub fn in_use<'a>(job: &'a Job, other: &Mark) -> Option<&'a Mark> {
    if !is_other(other) {
        return None;
    }
    let alike = |it: &&Mark| it.calculator == other.calculator && !is_other(it);
    let mut titled = job.marks.iter().filter(alike);
    titled.find(|it| other_title(&it.title) == other.title).or_else(|| {
        let mut near = job.marks.iter().filter(alike).filter(|it| it.spot == other.spot);
        near.next().filter(|_| near.next().is_none())
    })
}

/// The other versions of a number, in the order of the job.
pub fn others<'a>(job: &'a Job, mark: &Mark) -> impl Iterator<Item = &'a Mark> {
    let others = job.marks.iter().filter(|other| is_other(other));
    others.filter(|other| in_use(job, other).is_some_and(|it| it.id == mark.id))
}

/// Puts the other version in the place of the one in use: under its id and title, so that what takes
/// from it takes from this one. The one that was in use is gone then, until it is undone.
pub fn use_other(job: &Job, mark: &Mark, other: &Mark) -> Edit {
    let Mark { id, title, clock, .. } = mark.clone();
    let sample = job.note_sample(&id, &job.noted_sample(&other.id), job.is_said_own(&other.id));
    let change = Edit::Change(Mark { id, title, clock, ..other.clone() });
    Edit::Several(sample.into_iter().chain([change, Edit::Remove(other.id.clone())]).collect())
}

fn is_other(mark: &Mark) -> bool {
    is_other_title(&mark.title)
}

#[cfg(test)]
mod tests {
    use super::super::edit::apply;
    use super::super::merge;
    use super::super::samples::{self, stamp};
    use super::*;

    /// What two phones make of one number.
    fn merged(mine: Mark, theirs: Mark) -> Job {
        let base = samples::job();
        let [ours, other] = [(mine, 1), (theirs, 2)].map(|(mark, by)| {
            let mut job = base.clone();
            apply(&mut job, Edit::Change(mark), &stamp(by)).unwrap();
            job
        });
        let mut job = ours.clone();
        apply(&mut job, merge(&ours, &other).edit.unwrap(), &stamp(3)).unwrap();
        job
    }

    fn changed(title: &str, note: &str) -> Mark {
        let mark = samples::job().marks[0].clone();
        Mark { title: title.into(), note: note.into(), ..mark }
    }

    #[test]
    fn each_of_two_versions_finds_the_other() {
        for (mine, theirs) in [("Shelf", "Shelf"), ("Shelf, north", "Shelf, south")] {
            let job = merged(changed(mine, "here"), changed(theirs, "there"));
            let id = &samples::job().marks[0].id;
            let used = job.mark(id).unwrap();
            let other = job.marks.iter().find(|it| is_other(it)).unwrap();
            assert_eq!(in_use(&job, other).map(|it| &it.id), Some(id));
            assert_eq!(others(&job, used).map(|it| &it.id).collect::<Vec<_>>(), [&other.id]);
            assert_eq!((in_use(&job, used), others(&job, other).count()), (None, 0));
        }
    }

    #[test]
    fn the_other_one_takes_its_place_and_gives_it_back() {
        let mut job = merged(changed("Shelf", "here"), changed("Shelf", "there"));
        let before = job.clone();
        let other = job.marks.iter().find(|it| is_other(it)).unwrap().clone();
        let used = in_use(&job, &other).unwrap().clone();
        let undo = apply(&mut job, use_other(&before, &used, &other), &stamp(4)).unwrap();
        assert_eq!(job.marks.len(), before.marks.len() - 1);
        let now = job.mark(&used.id).unwrap();
        assert_eq!((&now.title, &now.note), (&used.title, &other.note));
        apply(&mut job, undo, &stamp(5)).unwrap();
        let says = |job: &Job| job.marks.iter().map(|it| it.note.clone()).collect::<Vec<_>>();
        assert_eq!(says(&job), says(&before));
    }

    #[test]
    fn a_title_of_its_own_makes_it_a_number_of_its_own() {
        let mut job = merged(changed("Shelf", "here"), changed("Shelf", "there"));
        let other = job.marks.iter().find(|it| is_other(it)).unwrap().clone();
        let own = Mark { title: "Upper shelf".into(), ..other };
        apply(&mut job, Edit::Change(own.clone()), &stamp(4)).unwrap();
        assert_eq!(in_use(&job, &own), None);
        assert!(job.marks.iter().all(|it| others(&job, it).next().is_none()));
    }
}
