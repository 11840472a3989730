// Where the service runs; it must allow this page's origin (AllowedOrigins).
const service = new URLSearchParams(location.search).get("service") ?? "http://localhost:5080";

// What the shop knows of its customers' cars, and of what it sells.
const cars = {
  "Aldermoor Tarn": { topSpeedKmh: 228, maximumAxleLoadKg: 870, centreBoreMm: 63.4, wheel: "7.5Jx17 ET45 5x108", tyre: "225/45R17 91W" },
  "Aldermoor Tarn, 16-inch wheels": { topSpeedKmh: 210, maximumAxleLoadKg: 840, centreBoreMm: 63.4, wheel: "7Jx16 ET47 5x108", tyre: "205/55R16 91V" },
};
const products = [
  { wheel: "8Jx17 ET40 5x108 CB63.4", tyre: "225/45R17 94W XL" },
  { wheel: "8.5Jx18 ET30 5x108 CB63.4", tyre: "245/40R18 97Y XL" },
  { wheel: "8Jx17 ET40 5x112 CB66.6", tyre: "225/45R17 94W XL" },
];
const headlines = { pass: "It fits.", caution: "It fits, with care.", fail: "It does not fit.", unknown: "Not known yet." };

const form = document.querySelector("form");
for (const name of Object.keys(cars)) form.car.add(new Option(name));
for (const [i, { wheel, tyre }] of products.entries()) form.product.add(new Option(`${wheel.split(" 5x")[0]}, ${tyre}`, i));

function show(headline, sentence, picture) {
  document.querySelector("#verdict").textContent = headline;
  document.querySelector("#summary").textContent = sentence;
  document.querySelector("#answer img")?.remove();
  if (picture) document.querySelector("#answer").append(Object.assign(new Image(), { src: picture, alt: sentence }));
}

form.addEventListener("input", () => show("", ""));
form.addEventListener("submit", async (event) => {
  event.preventDefault();
  show("", "Asking …");
  const { wheel, tyre, topSpeedKmh, maximumAxleLoadKg, centreBoreMm } = cars[form.car.value];
  const product = products[form.product.value];
  const clearance = {};
  for (const gap of ["inboardMm", "outboardMm"]) if (form[gap].value !== "") clearance[gap] = form[gap].valueAsNumber;
  const front = { maximumAxleLoadKg, wheel: { marking: wheel }, tyre: { marking: tyre }, hub: { centreBoreMm }, clearance };
  const candidate = { wheel: { marking: product.wheel }, tyre: { marking: product.tyre } };
  const picture = new URLSearchParams({ now: `${wheel},${tyre}`, new: `${product.wheel},${product.tyre}`, topSpeedKmh, maximumAxleLoadKg, centreBoreMm });
  if (clearance.inboardMm !== undefined) picture.set("in", clearance.inboardMm);
  if (clearance.outboardMm !== undefined) picture.set("out", clearance.outboardMm);
  try {
    const response = await fetch(`${service}/v1/fitment/check?detail=verdict`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ axle: "front", vehicle: { topSpeedKmh, front }, candidate }),
    });
    const answer = await response.json();
    if (response.ok) show(headlines[answer.verdict], answer.summary, `${service}/v1/fitment/drawing?${picture}`);
    else show("The question was refused.", answer.detail);
  } catch {
    show("No answer.", "The fit check cannot be reached just now. Try again in a minute, or ask us.");
  }
});
