import { FirstOwnerService } from '@api/modules/access';
import { type RunningService, startEmptyService } from '../support/service/test-service';
import { accessibilityFaults } from './support/accessibility';
import { type Device, openDevice, signIn, TABLET } from './support/browser';

jest.setTimeout(180_000);

let service: RunningService;
let device: Device;

beforeAll(async () => {
  service = await startEmptyService();
  device = await openDevice(service.origin, TABLET);
});
afterAll(async () => {
  await device.close();
  await service.close();
});

describe('somebody who has never seen it', () => {
  it('becomes the owner by the one-time link and writes the workshop’s settings', async () => {
    const { page } = device;
    const token = await service.app.get(FirstOwnerService).invite();
    await page.goto(`/first-owner?token=${String(token)}`);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByLabel(/^Name/).fill('Nadège');
    await page.getByLabel(/^Password/).fill('a long enough secret');
    await page.getByRole('button', { name: 'Create the owner' }).click();
    await page.getByRole('heading', { level: 1, name: 'Workshop', exact: true }).waitFor();
    await page.getByLabel(/^Name/).fill('Invented Bench');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved.').waitFor();
    await page.getByRole('link', { name: 'Invented Bench' }).waitFor();
  });

  it('adds people, a supplier, a place and an ingredient on screen', async () => {
    const { page } = device;
    await page.getByRole('link', { name: 'People' }).click();
    await page.getByRole('button', { name: 'Add a person' }).click();
    await page.getByRole('dialog').getByLabel(/^Name/).fill('Tom');
    await page
      .getByRole('dialog')
      .getByLabel(/^Password/)
      .fill('another long secret');
    await page
      .getByRole('dialog')
      .getByLabel(/^Bench PIN/)
      .fill('2468');
    await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
    await page.getByRole('cell', { name: 'Tom', exact: true }).waitFor();

    await page.getByRole('link', { name: 'Suppliers' }).click();
    await page.getByRole('button', { name: 'Add a supplier' }).click();
    await page.getByRole('dialog').getByLabel(/^Name/).fill('Dairy of the example');
    await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
    await page.getByRole('cell', { name: 'Dairy of the example', exact: true }).waitFor();

    await page.goto('/goods-in/items');
    await page.getByRole('button', { name: 'Add an item' }).click();
    await page.getByRole('dialog').getByLabel(/^Name/).fill('Cream 35 %');
    await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
    await page.getByRole('link', { name: 'Cream 35 %' }).waitFor();
  });

  it('takes goods in: the lot without a specification is on hold by itself, and says why', async () => {
    const { page } = device;
    await page.goto('/goods-in/new');
    await page
      .getByLabel(/^Supplier/)
      .first()
      .selectOption({ label: 'Dairy of the example' });
    await page.getByRole('combobox', { name: 'Item' }).click();
    await page.getByRole('option', { name: 'Cream 35 %' }).click();
    await page.getByLabel(/^Supplier’s lot/).fill('CR-77');
    await page.getByLabel(/^Date/).fill('2030-01-31');
    await page.getByLabel(/^Quantity/).fill('5000');
    await page.getByLabel(/^Price of the whole line/).fill('24.50');
    await page.getByRole('button', { name: 'Add this line' }).click();
    await page.getByRole('button', { name: 'Book the delivery' }).click();
    await page.getByRole('heading', { level: 1, name: /^Delivery of/ }).waitFor();
    expect(await page.getByText(/on hold:/).count()).toBeGreaterThan(0);
  });

  it('lets somebody else take over with a bench PIN', async () => {
    const { page } = device;
    await page.getByRole('button', { name: /Nadège/ }).click();
    await page.getByRole('dialog').getByText('Tom').click();
    await page.getByLabel(/^Bench PIN/).fill('2468');
    await page.getByRole('button', { name: 'Take over' }).click();
    await page.getByRole('button', { name: /^Tom/ }).waitFor();
  });

  it('is told plainly that a password is wrong, and gets in with the right one', async () => {
    const other = await openDevice(service.origin, TABLET);
    const { page } = other;
    await page.goto('/');
    await page.getByLabel(/^Name/).fill('Nadège');
    await page.getByLabel(/^Password/).fill('not the password');
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page
      .getByRole('alert')
      .getByText(/name or password/i)
      .waitFor();
    await signIn(page, 'Nadège', 'a long enough secret');
    await other.close();
  });
});
