-- Which free bay, stand and lens can take the shot named ?1 on day ?2, and why the others cannot. `reason` is NULL
-- where they can; `look_at` is then what to look at before shooting.
SELECT bays.name AS bay,
       stands.name AS stand,
       lenses.name AS lens,
       coalesce(
           (SELECT 'booked: ' || group_concat(
                       CASE WHEN bay IS NOT NULL THEN 'bay' WHEN stand IS NOT NULL THEN 'stand' ELSE 'lens' END, ', ')
              FROM bookings
             WHERE day = ?2 AND (bay = bays.id OR stand = stands.id OR lens = lenses.id)),
           tablerig_can_take(shots.id, bays.id, stands.id, lenses.id)) AS reason,
       tablerig_look_at(shots.id, bays.id, stands.id, lenses.id) AS look_at,
       tablerig_reach_mm(shots.id, bays.id, stands.id, lenses.id) AS reach_mm,
       tablerig_pivot_mm(shots.id, bays.id, stands.id, lenses.id) AS pivot_mm,
       tablerig_factor(shots.id, bays.id, stands.id, lenses.id) AS factor,
       tablerig_overhead(shots.id, bays.id, stands.id, lenses.id) AS overhead
  FROM shots, bays, stands, lenses
 WHERE shots.name = ?1
 ORDER BY reason IS NOT NULL, bays.id, stands.id, lenses.id;
