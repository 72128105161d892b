// Finding elements the way a person does: only what is shown, and by the words it shows.
const CONTROLS =
  "button, a[href], input, select, textarea, summary, label, [role=button], [role=link], " +
  "[role=tab], [role=switch], [role=checkbox], [role=radio], [role=option], [role=menuitem], [tabindex]";

const tidy = (text) => (text ?? "").replace(/\s+/g, " ").trim();

const shown = (element) =>
  element.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }) &&
  element.getClientRects().length > 0;

const written = (element) => tidy(element.innerText ?? element.textContent);

// What the element shows; a field shows its value.
const shows = (element) =>
  element.matches("input, textarea") ? element.value
  : element.matches("select") ? tidy(element.selectedOptions[0]?.text)
  : written(element);

const named = (element) => {
  const by = element.getAttribute("aria-labelledby");
  if (by) return tidy(by.split(/\s+/).map((id) => document.getElementById(id)?.textContent).join(" "));
  const label = tidy(element.getAttribute("aria-label"));
  if (label) return label;
  if (element.labels?.length) return tidy([...element.labels].map(written).join(" "));
  return written(element) || tidy(element.title);
};

// Of nested matches only the innermost, and of a label and its control only the control.
const innermost = (list) =>
  list.filter((element) => !list.some((other) =>
    other !== element && (element.contains(other) || element.control === other)));

const find = ({ how, what }) => {
  if (how === "css") return [...document.querySelectorAll(what)].filter(shown);
  if (how === "field") return [...document.querySelectorAll(`[data-path="${CSS.escape(what)}"]`)].filter(shown);
  const says = (element) => shown(element) && (named(element) === what || written(element) === what);
  const controls = innermost([...document.querySelectorAll(CONTROLS)].filter(says));
  if (controls.length) return controls;
  return innermost([...document.body.querySelectorAll("*")].filter(
    (element) => shown(element) && written(element) === what));
};

const describe = (element) => {
  if (!element) return "nothing";
  const id = element.id ? `#${element.id}` : "";
  const path = element.dataset?.path ? `[data-path="${element.dataset.path}"]` : "";
  const classes = [...element.classList].map((name) => `.${name}`).join("");
  const text = named(element).slice(0, 40);
  return `<${element.localName}${id}${classes}${path}>${text ? ` "${text}"` : ""}`;
};

const some = (spot) => {
  const list = find(spot);
  if (!list.length) throw new Error("nothing of the kind is shown");
  return list;
};

const one = (spot) => {
  const list = some(spot);
  if (list.length > 1) throw new Error(`${list.length} are shown: ${list.map(describe).join(", ")}`);
  return list[0];
};
