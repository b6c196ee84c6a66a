// From a phone's own tilt to the elevation and the roll of the lens axis it is laid along.
//
// The angles come as the DeviceOrientation specification has them: the phone turned by alpha about its z axis, then
// by beta about its x, then by gamma about its y. Which way is up, told in the phone's own axes, follows from beta and
// gamma alone: it is the last row of that rotation. The phone's axes are fixed to the phone, whichever way the
// screen's picture is turned, so that nothing here depends on the screen's rotation.

const RADIANS = Math.PI / 180;

/** The direction that points up, in the phone's axes: x to its right edge, y to its top edge, z out of its screen. */
export function upInPhone(betaDeg, gammaDeg) {
  const [beta, gamma] = [betaDeg * RADIANS, gammaDeg * RADIANS];
  return { x: -Math.cos(beta) * Math.sin(gamma), y: Math.sin(beta), z: Math.cos(beta) * Math.cos(gamma) };
}

/** How the phone lies: which of its axes is the lens axis, which is the camera's right, and which its top. */
export const WAYS = {
  back: {
    label: "Flat against the back of the camera, screen towards you",
    forward: ({ z }) => -z,
    right: ({ x }) => x,
    top: ({ y }) => y,
  },
  top: {
    label: "Flat on top of the lens or the camera, its top edge towards the subject",
    forward: ({ y }) => y,
    right: ({ x }) => x,
    top: ({ z }) => z,
  },
};

/** Elevation of the camera above the aim point: how far the lens axis looks down. */
export function elevationDeg(up, way) {
  const forward = WAYS[way].forward(up);
  const across = Math.hypot(WAYS[way].right(up), WAYS[way].top(up));
  return Math.atan2(-forward, across) / RADIANS;
}

/** How far the camera is rolled from level, right side up positive; null where it looks nearly straight down or up. */
export function rollDeg(up, way) {
  const { right, top } = WAYS[way];
  if (Math.hypot(right(up), top(up)) < 0.2) return null;
  const roll = Math.atan2(right(up), top(up)) / RADIANS;
  // Held upright, the camera is a quarter turn from level, and level all the same.
  return roll - 90 * Math.round(roll / 90);
}

/** Steadies readings: each new one counts the more, the longer ago the last was. */
export class Steadied {
  #value = /** @type {number | null} */ (null);
  #at = 0;

  constructor(settlingMs = 250) {
    this.settlingMs = settlingMs;
  }

  /** The steadied value, with this reading. */
  take(value, at) {
    const share = 1 - Math.exp(-Math.max(at - this.#at, 0) / this.settlingMs);
    const steadied = this.#value === null ? value : this.#value + share * (value - this.#value);
    this.#value = steadied;
    this.#at = at;
    return steadied;
  }
}
