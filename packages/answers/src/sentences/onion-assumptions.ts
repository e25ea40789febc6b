import { type Cultivar, plantOf } from '@neckfall/data';
import type { OnionType, PacketNote, PacketPlant } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { traitWords } from '../facts/index.ts';

/** What a named onion is taken as. */
export function cultivarAssumption(cultivar: Cultivar, speaker: Speaker): string {
  return speaker.say('assumed.cultivar', {
    name: cultivar.name,
    type: speaker.say(`type.${plantOf(cultivar).type}`),
    traits: traitWords(cultivar, speaker),
  });
}

/** What a packet of a class holds where it is started in autumn. */
export function autumnAssumption(type: OnionType, { say }: Speaker): string {
  return say('assumed.type-autumn', { type: say(`type.${type}`) });
}

/** What was made of a packet, in sentences. */
export function packetAssumptions({ type, notes }: PacketPlant, speaker: Speaker): string[] {
  return notes.map((note) => noteSentence(note, speaker.say(`type.${type}`), speaker));
}

function noteSentence(note: PacketNote, type: string, { say, day, dayLength, number }: Speaker): string {
  switch (note.code) {
    case 'type-from-class':
      return say('assumed.type', { class: say(`class.${note.class}`), type });
    case 'hours-taken':
    case 'hours-bounded':
      return say(`packet.${note.code}`, {
        hours: dayLength(note.hours),
        photoperiod: dayLength(note.photoperiodH),
        type,
      });
    case 'days-unused':
      return say('packet.days-unused', { days: note.days, type });
    case 'days-taken':
    case 'days-bounded': {
      const percent = Math.round(100 * Math.abs(note.factor - 1));
      const pace = percent === 0 ? 'packet.as-usual' : note.factor < 1 ? 'packet.sooner' : 'packet.later';
      return say(`packet.${note.code}`, {
        days: note.days,
        modelDays: number(note.modelDays),
        start: say(`start.${note.start}`),
        date: day(note.startDay),
        type,
        pace: say(pace, { percent: number(percent) }),
      });
    }
  }
}
