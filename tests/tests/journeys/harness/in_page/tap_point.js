// Where a finger must go down to reach the spot; throws when it can't be reached.
async (spot) => {
  const element = one(spot);
  if (element.matches(":disabled")) throw new Error(`${describe(element)} is disabled`);

  // A page comes to rest in a frame: it scrolls to its top when it is first drawn, and a busy machine
  // may take long to draw it.
  const frame = () => new Promise((done) => { requestAnimationFrame(done); setTimeout(done, 2000); });
  const place = () => {
    const box = element.getBoundingClientRect();
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const settled = async () => {
    for (let before = place(), tries = 0; tries < 30; tries += 1) {
      await frame();
      const now = place();
      if (now.x === before.x && now.y === before.y) return now;
      before = now;
    }
    throw new Error(`${describe(element)} does not stop moving`);
  };
  const over = ({ x, y }) => document.elementFromPoint(x, y);
  const reaches = (hit) => hit && (element.contains(hit) || hit.closest("label")?.control === element);

  let point = await settled();
  if (!reaches(over(point))) {
    element.scrollIntoView({ block: "center", inline: "center", behavior: "instant" });
    point = await settled();
  }
  const hit = over(point);
  if (!hit) throw new Error(`${describe(element)} can't be scrolled into view`);
  if (!reaches(hit)) throw new Error(`${describe(hit)} covers ${describe(element)}`);

  // A page wider than the screen is drawn smaller; the finger goes by the screen.
  const view = window.visualViewport;
  return { x: (point.x - view.offsetLeft) * view.scale, y: (point.y - view.offsetTop) * view.scale };
}
