"""Solved for: counterweight, base weight, longest reach, the legs' best and worst direction; and the boom's sag."""

from mpmath import mp, mpf

from numbers50 import Fence, cosine, dot, in_degrees, length, minus, over, plus
from rig import GRAVITY, STATES, Mass, about, edges_of


def counterweight(b, placed, found, out):
    out["counterweight_to_balance"] = None
    arm = b["tail_mm"] if b["counterweight_out_mm"] is None else b["counterweight_out_mm"]
    if not placed.has_boom or arm == 0:
        return
    moment = sum(
        (m.kg * dot(minus(m.at, placed.column), placed.towards) for m in found if m.kind in ("payload", "boom")),
        mpf(0),
    )
    over(moment)
    out["counterweight_to_balance"] = max(moment / (arm * cosine(b["pitch_deg"])), mpf(0))


def base(b, placed, keep, out):
    add, size = mpf(0), mpf(0)
    for name in STATES:
        if not b["hold_" + name]:
            continue
        for edge in edges_of(placed.feet):
            restoring, overturning = about(edge, keep[name])
            apothem = dot(minus(edge[0], placed.column), edge[1])
            # (restoring + add × apothem) / overturning = wanted.
            add = max(add, (b["wanted_factor"] * overturning - restoring) / apothem)
            size = max(size, b["wanted_factor"] * overturning / apothem, restoring / apothem)
    out["base_to_add"], out["base_scale"] = add, size


def longest_reach(b, placed, found, out):
    """The farthest reach that keeps the factor, the column moving off under a pivot that stays."""
    out["longest_reach"] = None
    if not placed.has_boom:
        return
    edges = edges_of(placed.feet)
    wanted, limit = b["wanted_factor"], b["longest_reach_mm"]

    def spare(reach):
        share = {"payload": 1, "boom": mpf(1) / 2}
        moved = [
            Mass(m.kind, m.kg, plus(m.at, placed.towards, share.get(m.kind, 0) * (reach - placed.reach)))
            for m in found
        ]
        pairs = [about(edge, moved) for edge in edges]
        return min(r - wanted * o for r, o in pairs)

    # Concave in the reach: climb to its top, then go down to where it crosses zero.
    low, high = mpf(0), limit
    for _ in range(60):
        a, c = low + (high - low) / 3, high - (high - low) / 3
        if spare(a) < spare(c):
            low = a
        else:
            high = c
        if spare((low + high) / 2) > 0:
            break
    top = (low + high) / 2
    best = max(spare(top), spare(mpf(0)), spare(limit))
    scale = sum((m.kg for m in found), mpf(0)) * b["foot_radius_mm"]
    if abs(best) < mpf("1e-6") * scale:
        raise Fence("just no reach")
    if best < 0:
        return
    if spare(limit) >= 0:
        over(spare(limit), scale)
        out["longest_reach"] = limit
        return
    if spare(top) < 0:
        top = mpf(0)
    low, high = top, limit
    # Bisect to one straight piece, then cross it; asserted to be a root.
    for _ in range(40):
        middle = (low + high) / 2
        if spare(middle) >= 0:
            low = middle
        else:
            high = middle
    at_low, at_high = spare(low), spare(high)
    root = low + (high - low) * at_low / (at_low - at_high)
    if abs(spare(root)) > mpf("1e-30") * scale:
        raise Fence("a knee at the root")
    out["longest_reach"] = root


def legs(b, placed, found, out):
    total = sum((m.kg for m in found), mpf(0))
    centre = [sum((m.kg * (m.at[i] - placed.column[i]) for m in found), mpf(0)) / total for i in (0, 1)]
    spacing = mpf(360) / b["leg_count"]
    along = centre[0] * placed.towards[0] + centre[1] * placed.towards[1]
    left = centre[0] * placed.left[0] + centre[1] * placed.left[1]
    out["leg_spacing"] = spacing
    if mp.hypot(along, left) < mpf("1e-6"):
        raise Fence("no direction")
    direction = in_degrees(mp.atan2(left, along))

    def margin(first):
        """Of the centre, with the first leg turned so."""
        feet = []
        for i in range(b["leg_count"]):
            at = first + i * spacing
            feet.append([b["foot_radius_mm"] * cosine(at), b["foot_radius_mm"] * mp.sinpi(at / 180), mpf(0)])
        return min(
            -((along - foot[0]) * outward[0] + (left - foot[1]) * outward[1])
            for foot, outward in edges_of(feet)
        )

    for name, at in ("best", direction), ("worst", direction + spacing / 2):
        out[name + "_first_leg"] = at - spacing * mp.floor(at / spacing)
        out[name + "_margin"] = margin(at)


def sag(b, placed, payload_kg, sensor_distance, out):
    names = ("sag_deflection", "sag_height_lost", "sag_slope", "sag_aim_shift", "sag_frequency", "sag_settling")
    for name in names:
        out[name] = None
    if not placed.has_boom or (b["bending_stiffness_n_m2"] is None and b["tube_outside_mm"] is None):
        return
    if b["bending_stiffness_n_m2"] is not None:
        ei = b["bending_stiffness_n_m2"]
    else:
        d, i = b["tube_outside_mm"] / 1000, b["tube_inside_mm"] / 1000
        ei = mp.pi / 64 * (d**4 - i**4) * b["tube_modulus_n_per_mm2"] * 10**6
    l = placed.boom_length / 1000
    if not over(l):
        raise Fence("no boom length")
    outer = b["boom_mass_kg"] * placed.boom_length / (placed.boom_length + b["tail_mm"])
    slant = cosine(b["pitch_deg"])
    p, w = payload_kg * GRAVITY * slant, outer * GRAVITY * slant / l
    deflection = (p * l**3 / (3 * ei) + w * l**4 / (8 * ei)) * 1000
    slope = p * l**2 / (2 * ei) + w * l**3 / (6 * ei)
    frequency = mp.sqrt(3 * ei / (l**3 * (payload_kg + mpf(33) / 140 * outer))) / (2 * mp.pi)
    values = [deflection, deflection * slant, in_degrees(slope), sensor_distance * slope, frequency]
    for name, value in zip(names, values):
        out[name] = value
    if b["damping_ratio"] is not None:
        out["sag_settling"] = -mp.log(b["settled_share"]) / (b["damping_ratio"] * 2 * mp.pi * frequency)
