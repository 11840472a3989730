// Three calls with the types openapi-typescript makes of the description; exits 1 where a number is not the expected one.
import createClient from "openapi-fetch";
import type { components, paths } from "./generated/contract.js";

type Schemas = components["schemas"];
const client = createClient<paths>({ baseUrl: process.argv[2]! });

function expect(what: string, value: number | null | undefined, expected: number) {
  console.log(`${what}: ${value}`);
  if (typeof value !== "number" || Math.abs(value - expected) > 1e-6) throw new Error(`${what}: ${expected} was expected`);
}

const wheel = (rimWidthIn: number, offsetMm: number): Schemas["WheelDocument"] => ({ rimDiameterIn: 17, rimWidthIn, offsetMm });
const point = (xMm: number, yMm: number, zMm: number): Schemas["PointDocument"] => ({ xMm, yMm, zMm });

const check = await client.POST("/v1/fitment/check", {
  body: {
    axle: "front",
    vehicle: { frontAxleLoadKg: 690, front: { wheel: wheel(7.5, 45), tyre: { marking: "225/45R17 91W" } } },
    candidate: { wheel: wheel(8, 40), tyre: { marking: "225/45R17 94W XL" } },
  },
});
// Speed symbol W stands for 270 km/h (the handbook "Automotive Engineering: Powertrain, Chassis System and Vehicle Body",
// chapter 10.1, p. 291).
expect("speed rating in km/h", check.data?.checks?.find((item) => item.id === "speedRating")?.value, 270);

const strut: Schemas["MacPhersonStrutDocument"] = {
  kind: "macPhersonStrut",
  points: {
    lowerArmFront: point(12, 378, 192),
    lowerArmRear: point(-312, 388, 196),
    lowerBallJoint: point(8, 716, 178),
    strutTop: point(-67, 561, 843),
    strutLower: point(-14, 628, 405),
    tieRodInner: point(-148, 335, 232),
    tieRodOuter: point(-138, 697, 224),
    wheelCentre: point(0, 751, 305),
  },
};
const sweep = await client.POST("/v1/geometry/travel-sweep", {
  body: {
    vehicle: { front: { suspension: strut, alignment: { camberDeg: -0.7, toeDeg: 0.08 }, loadedRadiusMm: 302 } },
    axle: "front",
    travelMm: { from: -10, to: 10, step: 10 },
  },
});
// At its stated place the wheel has the stated camber.
expect("camber at no travel in degrees", sweep.data?.rows[1]?.camberDeg, -0.7);

const diagnosis = await client.POST("/v1/wear/diagnosis", {
  body: {
    use: { roadKm: 4200, trackLaps: 96, lapKm: 3.2 },
    tyres: [{ position: "frontLeft", newDepthMm: 7.8, depthMm: { outer: 3.4, centre: 5.2, inner: 5.5 } }],
  },
});
// The least of the three depths sent.
expect("least depth in mm", diagnosis.data?.tread[0]?.leastDepthMm, 3.4);
