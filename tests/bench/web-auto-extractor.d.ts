declare module 'web-auto-extractor';
