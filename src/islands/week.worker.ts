// Sets a week out off the main thread: the timetable first, then the most mashes, their week, and what stands in the way of more.
import { lackForMashes, type Lack } from '../core/week/lack.ts';
import type { WeekNeeds } from '../core/week/run-weeks.ts';
import { mostMashes, timetable, type Timetable } from '../core/week/timetable.ts';

export interface WeekQuestion {
  readonly id: number;
  readonly needs: WeekNeeds;
  readonly mashes: number;
}
export type WeekAnswer =
  | { readonly id: number; readonly week: Timetable | undefined; readonly lack: Lack | undefined }
  | {
      readonly id: number;
      readonly most: number;
      readonly next: Lack;
      /** The week of the most mashes, where those asked for do not fit. */
      readonly fitting: Timetable | undefined;
    };

addEventListener('message', ({ data }: MessageEvent<WeekQuestion>) => {
  const { id, needs, mashes } = data;
  const week = timetable(needs, mashes);
  postMessage({ id, week, lack: week ? undefined : lackForMashes(needs, mashes) } satisfies WeekAnswer);
  const most = Math.max(mostMashes(needs), week ? mashes : 0);
  const fitting = week || most === 0 ? undefined : timetable(needs, most);
  postMessage({ id, most, next: lackForMashes(needs, most + 1), fitting } satisfies WeekAnswer);
});
