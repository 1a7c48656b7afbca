import '@mantine/core/styles.layer.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/providers';
import './shared/kit/base.css';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no #root');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);

// The app itself opens without a connection; the service answers everything else.
if ('serviceWorker' in navigator && import.meta.env.PROD) {
  void navigator.serviceWorker.register('/offline.js').catch(() => undefined);
}
