//! A child process together with all the processes that it starts.
//!
//! A browser is a dozen processes. To kill it as a dead battery would, all must go at once: a
//! surviving storage process would write down what it still holds.

use std::fs;
use std::io::{BufRead, BufReader};
use std::os::unix::process::CommandExt;
use std::process::{Child, Command, Stdio};
use std::sync::mpsc;
use std::time::{Duration, Instant};

use rustix::process::{Pid, Signal, kill_process_group};

/// How long a child may take to start or to go.
const PATIENCE: Duration = Duration::from_secs(20);

/// A process that leads a group of its own; the whole group dies with this value.
pub(crate) struct Family {
    child: Child,
    name: String,
}

impl Family {
    /// Starts the command in a process group of its own.
    pub(crate) fn start(command: &mut Command) -> Family {
        let name = command.get_program().to_string_lossy().into_owned();
        let child = command
            .process_group(0)
            .stdin(Stdio::null())
            .spawn()
            .unwrap_or_else(|error| panic!("{name} does not start: {error}"));
        Family { child, name }
    }

    /// The first line of output that `pick` makes something of. Later output is read and dropped,
    /// so that the child never waits on a full pipe.
    pub(crate) fn first<T: Send + 'static>(
        &mut self,
        pick: impl Fn(&str) -> Option<T> + Send + 'static,
    ) -> T {
        self.try_first(pick)
            .unwrap_or_else(|| panic!("{} did not say that it had started", self.name))
    }

    /// As [`Family::first`]; none where it ends, or the patience does, before any.
    pub(crate) fn try_first<T: Send + 'static>(
        &mut self,
        pick: impl Fn(&str) -> Option<T> + Send + 'static,
    ) -> Option<T> {
        let output = self.child.stdout.take().expect("the command was given a pipe for its output");
        let (found, wanted) = mpsc::channel();
        std::thread::spawn(move || {
            for line in BufReader::new(output).lines().map_while(Result::ok) {
                if let Some(value) = pick(&line) {
                    // Nobody listens for a second match, nor after the patience has run out.
                    let _ = found.send(value);
                }
            }
        });
        wanted.recv_timeout(PATIENCE).ok()
    }

    /// Whether the process has ended by itself.
    pub(crate) fn has_ended(&mut self) -> bool {
        matches!(self.child.try_wait(), Ok(Some(_)))
    }

    /// Waits for the process to end by itself.
    ///
    /// # Panics
    /// When it is still there after the patience has run out.
    pub(crate) fn wait(&mut self) {
        let start = Instant::now();
        while !self.has_ended() {
            assert!(start.elapsed() < PATIENCE, "{} does not end", self.name);
            std::thread::sleep(Duration::from_millis(5));
        }
    }

    /// Ends all of the group at once, with no chance to tidy up.
    pub(crate) fn kill(&mut self) {
        let _ = kill_process_group(Pid::from_child(&self.child), Signal::KILL);
        let _ = self.child.wait();
    }

    /// Ends all of the group, and waits until none of it is left to hold a lock on a file.
    pub(crate) fn kill_to_the_last(&mut self) {
        self.kill();
        let start = Instant::now();
        while has_members(Pid::from_child(&self.child)) {
            assert!(start.elapsed() < PATIENCE, "something of {} lives on", self.name);
            std::thread::sleep(Duration::from_millis(5));
        }
    }
}

// Whether any process of the group still runs. A dead one that nobody has asked after yet still
// has its line in /proc, and a signal would still find it; it holds nothing any more.
fn has_members(group: Pid) -> bool {
    let group = group.as_raw_nonzero().to_string();
    let stats = fs::read_dir("/proc").into_iter().flatten().flatten().filter_map(|process| {
        // A process may go between the listing and the reading.
        fs::read_to_string(process.path().join("stat")).ok()
    });
    stats.into_iter().any(|stat| {
        // `pid (name) state parent group ...`, and the name may hold anything.
        let fields = stat.rsplit_once(')').map_or("", |(_, fields)| fields);
        let mut fields = fields.split_whitespace();
        let state = fields.next().unwrap_or("X");
        !matches!(state, "Z" | "X") && fields.nth(1) == Some(group.as_str())
    })
}

impl Drop for Family {
    fn drop(&mut self) {
        self.kill();
    }
}
