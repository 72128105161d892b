// Elements that stick out of the device's width. The window's own width won't do: a phone widens
// it to whatever the page needs.
(width) => {
  const scrollsItself = (element) => {
    for (let box = element.parentElement; box && box !== document.body; box = box.parentElement) {
      if (/auto|scroll/.test(getComputedStyle(box).overflowX)) return true;
    }
    return false;
  };
  const out = [...document.body.querySelectorAll("*")].filter((element) => {
    if (!shown(element)) return false;
    const box = element.getBoundingClientRect();
    const [left, right] = [box.left + scrollX, box.right + scrollX];
    return right > 0 && (right > width + 0.5 || left < -0.5) && !scrollsItself(element);
  });
  const lines = innermost(out).map((element) => {
    const box = element.getBoundingClientRect();
    return `${describe(element)} from ${(box.left + scrollX).toFixed(1)} to ${(box.right + scrollX).toFixed(1)} of ${width}`;
  });
  const whole = document.scrollingElement.scrollWidth;
  if (whole > width && !lines.length) lines.push(`the page is ${whole} wide, by no element's box (text?)`);
  return lines;
}
