// snippet angular
import 'pulse-map';
import { Component, CUSTOM_ELEMENTS_SCHEMA, signal } from '@angular/core';
import { FormsModule } from '@angular/forms';
import { bootstrapApplication } from '@angular/platform-browser';
import { PulseMapValueAccessor } from 'pulse-map/angular';

@Component({
  selector: 'app-visit',
  imports: [FormsModule, PulseMapValueAccessor],
  schemas: [CUSTOM_ELEMENTS_SCHEMA],
  template: `
    <form>
      <label for="pulses">Pulses</label>
      <pulse-map id="pulses" name="pulses" [(ngModel)]="record" />
      <!-- snippet hide -->
      <button>Save</button>
      <button type="reset">Reset</button>
      <button type="button" id="load" (click)="record.set(lastVisit)">Last visit</button>
      <output id="state">{{ record() }}</output>
      <!-- snippet show -->
    </form>
  `,
})
export class Visit {
  readonly record = signal('');
  // snippet hide
  readonly lastVisit =
    '{"format":"pulse-map/1","scale":"0-3","pulses":{"femoral":{"right":{"grade":"reduced"}}}}';
  // snippet show
}
// snippet end

bootstrapApplication(Visit).catch((error: unknown) => console.error(error));
