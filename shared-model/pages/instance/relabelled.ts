/** An instance in other names, so that what is said of it can be read. */

import type { Pin, PlanInstance, PlanSide } from '../planner/instance.ts';

/** `nameOf` gives different names to different ids. */
export function relabelled(instance: PlanInstance, nameOf: (id: string) => string): PlanInstance {
  const reader = <S extends PlanSide>(side: S): S => ({
    ...side,
    reader: side.reader === null ? null : nameOf(side.reader),
  });
  const pinned = (pin: Pin): Pin =>
    pin.kind === 'turn'
      ? { ...pin, station: nameOf(pin.station), player: nameOf(pin.player) }
      : { ...pin, station: nameOf(pin.station) };
  return {
    ...instance,
    players: instance.players.map((player) => ({ ...player, id: nameOf(player.id) })),
    stations: instance.stations.map((station) => {
      const [first, second] = station.sides;
      return {
        ...station,
        id: nameOf(station.id),
        sides: second ? [reader(first), reader(second)] : [reader(first)],
        reach: station.reach.map((reach) => ({ ...reach, player: nameOf(reach.player) })),
      };
    }),
    ...(instance.pins ? { pins: instance.pins.map(pinned) } : {}),
  };
}
