import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

// The service serves `dist` at `/`. In development Vite proxies the service's own paths to it.
export default defineConfig({
  plugins: [react()],
  build: {
    target: 'es2022',
    manifest: true,
    sourcemap: false,
    assetsInlineLimit: 2048,
  },
  server: {
    proxy: { '/api': process.env['BALLOTIN_API'] ?? 'http://127.0.0.1:3000' },
  },
});
