// [what is broken, what could not be decided], a line for each element.
async () => {
  const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
  // Some rules of these levels are off unless they are asked for by name; those that axe-core
  // itself calls experimental or deprecated stay off.
  const kept = axe.getRules(tags).filter(({ tags }) => !tags.includes("experimental") && !tags.includes("deprecated"));
  const rules = Object.fromEntries(kept.map(({ ruleId }) => [ruleId, { enabled: true }]));
  const { violations, incomplete } = await axe.run(document, { runOnly: { type: "tag", values: tags }, rules });
  const lines = (results) => results.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) =>
      `${id}: ${target.flat().join(" ")}: ${help}. ${failureSummary.replace(/\s+/g, " ")}`));
  return [lines(violations), lines(incomplete)];
}
