import type { Locator, Page } from 'playwright-core';
import { PASSWORD, startTestService, type TestService } from '../../support/service/test-service';
import { type Device, openDevice, signIn, type Size, TABLET } from './browser';
import { personOf, type Role, startDemoShop } from './demo-shop';
import type { RunningService } from '../../support/service/test-service';

export interface Story<S extends RunningService = TestService> {
  readonly service: S;
  readonly device: Device;
  readonly page: Page;
  end(): Promise<void>;
}

interface Setting {
  readonly size?: Size;
  readonly locale?: string;
}

/** Another device in the hands of somebody with that role. */
export const deviceOf = async (
  service: TestService,
  role: Role,
  { size = TABLET, locale }: Setting = {},
): Promise<Device> => {
  const device = await openDevice(service.origin, size, locale);
  await signIn(device.page, `The ${role}`, PASSWORD);
  return device;
};

const storyOf = <S extends RunningService>(service: S, device: Device): Story<S> => ({
  service,
  device,
  page: device.page,
  end: async () => {
    await device.close();
    await service.close();
  },
});

/** A workshop without anything in it, and a tablet at which somebody with that role is signed in. */
export const openStory = async (role: Role, setting?: Setting): Promise<Story> => {
  const service = await startTestService();
  return storyOf(service, await deviceOf(service, role, setting));
};

/** The same in the demo workshop. */
export const openDemoStory = async (
  role: Role,
  { size = TABLET, locale }: Setting = {},
): Promise<Story<RunningService>> => {
  const service = await startDemoShop();
  const device = await openDevice(service.origin, size, locale);
  const person = personOf(role);
  await signIn(device.page, person.name, person.password);
  return storyOf(service, device);
};

/** Chooses from a list in which one types part of the name. */
export const pick = async (within: Page | Locator, label: string | RegExp, name: string) => {
  const field = within.getByRole('combobox', { name: label }).last();
  await field.click();
  await field.fill(name);
  const page = 'page' in within ? within.page() : within;
  await page.getByRole('option', { name, exact: true }).click();
};

/**
 * What a scanner on USB does: the keys of the code, one every 5 ms, and Enter. They are sent from
 * inside the page with their times on them, as the gaps would else hang on how busy this machine is.
 */
export const scan = (page: Page, text: string): Promise<void> =>
  page.evaluate(
    (keys) => {
      const start = performance.now();
      for (const [position, key] of keys.entries()) {
        const press = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
        Object.defineProperty(press, 'timeStamp', { value: start + 5 * position });
        (document.activeElement ?? document.body).dispatchEvent(press);
      }
    },
    [...text, 'Enter'],
  );

/** Fetches a paper with the person's own session. */
export const bytesOf = async (device: Device, link: Locator): Promise<Buffer> => {
  const answer = await device.context.request.get((await link.getAttribute('href')) ?? '');
  if (!answer.ok()) throw new Error(`${answer.url()} answers ${String(answer.status())}`);
  return answer.body();
};

/** Whether a paper that is offered is there and is a PDF. */
export const isPdf = async (device: Device, link: Locator): Promise<boolean> =>
  (await bytesOf(device, link)).subarray(0, 5).toString() === '%PDF-';

let broken = false;

/** A step of a story: those after the first that fails are not tried, as they stand on it. */
export const step = (name: string, play: () => Promise<void>): void => {
  it(name, async () => {
    if (broken) throw new Error('not tried: an earlier step of this story failed');
    broken = true;
    await play();
    broken = false;
  });
};
