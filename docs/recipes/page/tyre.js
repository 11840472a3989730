// Reads a tyre marking as a person types it. The service must allow this page's origin (AllowedOrigins); a key never belongs in a page.
"use strict";

const service = new URLSearchParams(location.search).get("service") ?? "http://localhost:5080";
const said = document.querySelector("#said");

async function read(marking) {
  const response = await fetch(`${service}/v1/tyres/decode?${new URLSearchParams({ marking })}`);
  const answer = await response.json();

  // A refusal is a problem (RFC 9457): its first fault says what is wrong with what was typed.
  if (!response.ok) return answer.errors[0]?.message ?? answer.detail;
  return `${Math.round(answer.overallDiameterMm)} mm across, carries ${answer.loadCapacityKg} kg up to ${answer.maximumSpeedKmh} km/h, for rims from ${answer.permittedRimWidthIn.from} to ${answer.permittedRimWidthIn.to} in.`;
}

document.querySelector("form").addEventListener("submit", async (event) => {
  event.preventDefault();
  said.textContent = await read(event.target.marking.value).catch(() => "The service did not answer.");
});
