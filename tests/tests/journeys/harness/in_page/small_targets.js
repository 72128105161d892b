// Controls whose hit box is under the least size, smallest first.
(least) => {
  const controls = "button, a, input, select, textarea, summary, [role=button], [tabindex]:not([tabindex='-1'])";
  const middle = (box) => [box.x + box.width / 2, box.y + box.height / 2];

  // A label is part of its control's hit box.
  const box = (element) => {
    const boxes = [element, ...(element.labels ?? [])].filter(shown).map((part) => part.getBoundingClientRect());
    const left = Math.min(...boxes.map((part) => part.left));
    const top = Math.min(...boxes.map((part) => part.top));
    const right = Math.max(...boxes.map((part) => part.right));
    const bottom = Math.max(...boxes.map((part) => part.bottom));
    return new DOMRect(left, top, right - left, bottom - top);
  };
  // A hit box may be larger than what is drawn, by a pseudo-element: try its four ends.
  const answersAround = (element) => {
    element.scrollIntoView({ block: "center", inline: "center", behavior: "instant" });
    const [x, y] = middle(element.getBoundingClientRect());
    const reach = least / 2 - 0.5;
    return [[reach, 0], [-reach, 0], [0, reach], [0, -reach]].every(([right, down]) => {
      const hit = document.elementFromPoint(x + right, y + down);
      return hit && (element.contains(hit) || hit.closest("label")?.control === element);
    });
  };

  const start = [scrollX, scrollY];
  const small = [...document.querySelectorAll(controls)]
    .filter((element) => shown(element) && !element.hasAttribute("data-inline"))
    .map((element) => [element, box(element)])
    // A skip link that waits outside the page until it has the focus is no target yet.
    .filter(([, { right, bottom }]) => right + scrollX > 0 && bottom + scrollY > 0)
    .filter(([, { width, height }]) => width < least - 0.01 || height < least - 0.01)
    .filter(([element]) => !answersAround(element))
    .sort(([, one], [, other]) => one.width * one.height - other.width * other.height)
    .map(([element, { width, height }]) => `${describe(element)} ${width.toFixed(1)} x ${height.toFixed(1)}`);
  scrollTo(...start);
  return small;
}
