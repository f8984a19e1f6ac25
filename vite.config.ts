import preact from '@preact/preset-vite';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/**
 * Nothing leaves the device: the browser itself refuses every request to anywhere but the folder the app came from.
 * Only in the built app, since the development server needs inline scripts.
 */
const CONTENT_SECURITY_POLICY = [
  "default-src 'self'",
  "connect-src 'self'",
  "img-src 'self' blob: data:",
  "style-src 'self' 'unsafe-inline'",
  "worker-src 'self' blob:",
  "form-action 'none'",
  "base-uri 'self'",
].join('; ');

const nothingLeaves: Plugin = {
  name: 'nothing-leaves',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
      injectTo: 'head-prepend',
    },
  ],
};

export default defineConfig({
  base: './',
  build: { target: 'es2022', sourcemap: false },
  worker: { format: 'es' },
  plugins: [
    preact(),
    nothingLeaves,
    VitePWA({
      // A newer version waits until the app is closed: the page is never reloaded under the keeper's hands.
      registerType: 'prompt',
      workbox: { globPatterns: ['**/*.{js,css,html,svg,png,json,woff2}'], navigateFallback: 'index.html' },
      manifest: {
        name: 'Damline',
        short_name: 'Damline',
        description: 'Queens, boxes and lines kept apart; whom to breed from, and why.',
        display: 'standalone',
        start_url: './',
        background_color: '#fbfcfa',
        theme_color: '#fbfcfa',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
    }),
  ],
});
