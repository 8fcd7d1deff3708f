// What every page does once it is seen.
import './keep-offline.ts';
import '../browser/live-prose.ts';
import './doors.ts';
import './term-dismiss.ts';
import './left-off.ts';
import './lesson-here.ts';
import './corrections-later.ts';
