//! What is handed over on paper says what was worked out: the printed pages are read back and
//! compared with what the core tells that reader, figure by figure.

use crate::harness::{Device, Journey, Paper, Server, journey, saying};
use ledgerboard_core::job::buying::buying;
use ledgerboard_core::job::turnover::{Since, Turnover, Who, told, turnover};
use ledgerboard_core::job::{Survey, demo};
use ledgerboard_core::sheet::Verdict;
use ledgerboard_core::words::{Text, Voice};

/// Without spaces, which a page sets where a line ends, without the joined letters of its font, and
/// with fractions as they are typed: the page sets 9-1/4 as 9 1⁄4.
fn squeezed(text: &str) -> String {
    let text = text.replace('ﬀ', "ff").replace('ﬁ', "fi").replace('ﬂ', "fl").replace('⁄', "/");
    text.chars()
        .filter(|it| !it.is_whitespace() && *it != '-')
        .flat_map(char::to_lowercase)
        .collect()
}

/// All that the pages after the first have to say of each number.
fn told_of(sheet: &Turnover, say: impl Fn(&Text) -> String) -> Vec<String> {
    let mut all = Vec::new();
    for number in sheet.numbers() {
        all.push(number.title.clone());
        // A table tells an owner the places, in the place of the answer's own figure.
        if sheet.who != Who::Owner || number.parts.is_empty() {
            all.push(
                [say(&number.headline.name), ":".into(), say(&number.headline.value())].concat(),
            );
        }
        for figure in &number.figures {
            all.push([say(&figure.name), say(&figure.value())].concat());
        }
        for check in &number.checks {
            all.push([&say(&told(check)), "."].concat());
            all.push([check.source.clause.en, &say(&check.word().into())].concat());
        }
        for part in &number.parts {
            all.push(say(&part.title));
            all.extend(part.rows.iter().map(|row| [say(&row.name), say(&row.value)].concat()));
            // Cells beside each other break in lines of their own: each word is somewhere.
            let rows = part.table.iter().flat_map(|table| &table.rows);
            let cells = rows.flat_map(|row| row.cells.iter().chain([&row.name]));
            for cell in cells.map(&say) {
                all.extend(cell.split_whitespace().map(str::to_owned));
            }
        }
    }
    all
}

/// Pages at most, of the invented job's sheets.
const MOST_PAGES: [(Who, usize); 4] =
    [(Who::Electrician, 6), (Who::Mechanical, 4), (Who::Inspector, 11), (Who::Owner, 2)];

#[tokio::test]
async fn each_sheet_prints_what_was_worked_out_and_its_first_page_stands_alone() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        let voice = Voice::default();
        let job = demo(voice);
        let survey = Survey::of(&job);
        for (who, most) in MOST_PAGES {
            let sheet = turnover(&job, &survey, who);
            page.goto(&["#/job/demo/", who.key()].concat()).await;
            page.sees(".sheet .first").await;
            for paper in [Paper::Letter, Paper::A4] {
                let pages = page.printed(paper).await;
                let count = pages.len();
                println!("{} on {paper:?}: {count} pages", who.key());
                assert!(count <= most, "{} on {paper:?}: {count} pages", who.key());
                for (at, page) in pages.iter().enumerate() {
                    let lines = page.lines().filter(|line| !line.trim().is_empty()).count();
                    assert!(lines > 8, "{} on {paper:?}, page {}: {page}", who.key(), at + 1);
                }
                let (first, rest) = pages.split_first().unwrap();
                // What an owner has read on the first page, all of it, isn't told again.
                let rest = if who == Who::Owner { &pages } else { rest };
                let (first, rest) = (squeezed(first), squeezed(&rest.concat()));
                let missing: Vec<String> = told_of(&sheet, |text| voice.say(text))
                    .into_iter()
                    .filter(|says| !rest.contains(&squeezed(says)))
                    .collect();
                assert!(missing.is_empty(), "{} on {paper:?}: {missing:#?}\n{rest}", who.key());

                let mut summary =
                    vec!["Changed since".to_owned(), "Notes".to_owned(), "Date".to_owned()];
                for number in sheet.numbers() {
                    summary.push(number.title.clone());
                    if number.since != Since::Same && who != Who::Owner {
                        summary.push(voice.say(&number.headline.value()));
                    }
                    let open = number.checks.iter().filter(|it| it.verdict != Verdict::Within);
                    let open = open.filter(|_| !number.is_held);
                    summary.extend(open.map(|it| voice.say(&told(it))));
                }
                summary.extend(sheet.gone.iter().cloned());
                for says in summary {
                    let page = who.key();
                    assert!(
                        first.contains(&squeezed(&says)),
                        "{page} on {paper:?}: {says}\n{first}"
                    );
                }
            }
        }
    })
    .await;
}

/// What is needed is printed only where it isn't what is bought, and nothing that nobody filled in.
#[tokio::test]
async fn the_list_to_buy_prints_each_thing_once_on_one_page() {
    journey(Server::start("/"), Device::Phone, async |Journey { page, .. }| {
        let voice = Voice::default();
        let job = demo(voice);
        let all = buying(&job, &Survey::of(&job));
        let (same, other): (Vec<_>, Vec<_>) = all.lines.iter().partition(|it| it.is_as_needed());
        assert!(!same.is_empty() && !other.is_empty());
        page.goto("#/job/demo/buy").await;
        page.sees(".buy").await;
        let pages = page.printed(Paper::Letter).await;
        let text = squeezed(&pages.concat());
        println!("to buy: {} pages", pages.len());
        for line in &all.lines {
            let says = [voice.say(&line.name), voice.say(&line.says())].concat();
            assert!(text.contains(&squeezed(&says)), "{says}\n{text}");
        }
        assert_eq!(text.matches("needed").count(), other.len(), "{text}");
        assert!(!text.contains("wherefrom"), "{text}");
        assert_eq!(pages.len(), 1, "{text}");

        // A person's own list says how much is to spare once somebody has said so.
        page.goto("#/cable-securing").await;
        page.tap(saying("Save to job")).await;
        page.tap(saying("Done")).await;
        page.goto("#/jobs").await;
        page.tap("main .doors a").await;
        page.tap(saying("What to buy")).await;
        page.sees(saying("Spare for all, percent")).await;
        let bare = page.printed(Paper::Letter).await.concat();
        assert!(!squeezed(&bare).contains("spareforall"), "{bare}");
        page.enter("[id='spare-of-all']", "10").await;
        page.until("JSON.stringify({...localStorage}).includes('spare ')").await;
        let said = page.printed(Paper::Letter).await.concat();
        assert!(squeezed(&said).contains("spareforall"), "{said}");
    })
    .await;
}
