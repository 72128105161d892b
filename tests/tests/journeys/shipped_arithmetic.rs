//! The file that ships answers as the native program does, byte for byte.

use ledgerboard_core::catalog::answer_line;

use crate::harness::{Device, Journey, Server, journey, saying};

#[tokio::test]
async fn the_shipped_file_answers_every_vector_byte_for_byte() {
    let vectors = [
        include_str!("../../vectors/air.jsonl"),
        include_str!("../../vectors/boards.jsonl"),
        include_str!("../../vectors/box-fill.jsonl"),
        include_str!("../../vectors/drilling.jsonl"),
        include_str!("../../vectors/duct-branch.jsonl"),
        include_str!("../../vectors/duct-return-path.jsonl"),
        include_str!("../../vectors/duct-tree.jsonl"),
        include_str!("../../vectors/hold.jsonl"),
        include_str!("../../vectors/hole-cables.jsonl"),
        include_str!("../../vectors/room.jsonl"),
        include_str!("../../vectors/rough-in.jsonl"),
    ];
    let questions: Vec<&str> =
        vectors.iter().flat_map(|file| file.lines()).filter(|line| !line.is_empty()).collect();
    assert!(questions.len() > 400, "{}", questions.len());
    journey(Server::start("/"), Device::Desk, async |Journey { page, .. }| {
        page.goto("").await;
        // It can be asked once it has started.
        page.sees(saying("Box fill")).await;
        page.sees("h1").await;
        let list = serde_json::to_string(&questions).expect("text is JSON");
        // The same module that runs the page: its script is imported once, whoever asks.
        let ask = format!(
            "import(document.querySelector('link[rel=modulepreload]').href) \
             .then((program) => {list}.map((line) => program.answer_line(line)))"
        );
        let answers: Vec<String> = page.evaluate(&ask).await;
        for (question, answer) in questions.iter().zip(&answers) {
            assert_eq!(*answer, answer_line(question), "{question}");
        }
        assert_eq!(answers.len(), questions.len());
    })
    .await;
}
