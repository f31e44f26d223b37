import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/**
 * Layer rules: dependencies point inward, hosts -> workbench -> {catalogue, sheet, model}; the renderer and every
 * layer may import shared-types; nobody imports a host. A layer names what it may NOT reach; type imports obey too.
 * `folders` are refused wherever they stand in a relative path; `packages` is the regular expression of the
 * packages allowed (null: any).
 */
const layer = (files, { folders, packages = null, ignores = [] }) => ({
  files,
  ignores,
  rules: {
    '@typescript-eslint/no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            regex: `^\\.{1,2}/(.*/)?(${folders.join('|')})(/|$)`,
            message: 'This import points outward: see the layer rules in DEVELOPERS.md.',
          },
          ...(packages === null
            ? []
            : [
                {
                  regex: `^(?!\\.|${packages})`,
                  message: 'This layer may not use this package: see DEVELOPERS.md.',
                },
              ]),
        ],
      },
    ],
  },
});

const layers = [
  layer(['shared-types/**/*.ts'], { folders: ['src-main', 'src-renderer', 'db'], packages: 'zod$' }),
  layer(['src-main/model/**/*.ts'], {
    folders: ['catalogue', 'sheet', 'workbench', 'workers', 'hosts', 'src-renderer', 'db'],
    packages: 'astronomy-engine$|pure-rand/',
  }),
  layer(['src-main/catalogue/**/*.ts'], {
    folders: ['model', 'sheet', 'workbench', 'workers', 'hosts', 'src-renderer'],
    packages: 'node:|better-sqlite3$|papaparse$|zod$',
  }),
  layer(['src-main/sheet/**/*.ts'], {
    folders: ['model', 'catalogue', 'workbench', 'workers', 'hosts', 'src-renderer', 'db'],
    packages: 'node:|pdfmake|papaparse$',
  }),
  layer(['src-main/workbench/**/*.ts'], {
    folders: ['hosts', 'src-renderer'],
    packages: 'node:|zod$|papaparse$|sax$',
  }),
  layer(['src-main/hosts/**/*.ts'], {
    folders: ['catalogue', 'model', 'sheet', 'src-renderer', 'db'],
    packages: 'node:|electron$|hono|@hono/|open$',
  }),
  layer(['src-main/hosts/!(electron)/**/*.ts', 'src-main/hosts/*.ts'], {
    folders: ['catalogue', 'model', 'sheet', 'src-renderer', 'db', 'electron'],
    packages: 'node:|hono|@hono/|open$',
  }),
  layer(['src-main/hosts/packaging/*.ts'], {
    folders: [
      'catalogue',
      'model',
      'sheet',
      'workbench',
      'workers',
      'src-renderer',
      'db',
      'electron',
      'loopback',
    ],
    packages: 'node:|electron-builder$|vite$',
  }),
  layer(['src-renderer/**/*.ts', 'src-renderer/**/*.svelte'], {
    folders: ['src-main', 'db'],
    packages: 'svelte|chart\\.js|papaparse$|zod$|@fontsource/|vite/',
  }),
];

export default ts.config(
  { ignores: ['out/', 'node_modules/', 'demo-output/'] },
  js.configs.recommended,
  ...ts.configs.strictTypeChecked,
  ...svelte.configs.recommended,
  {
    languageOptions: {
      globals: globals.browser,
      parserOptions: {
        project: ['./*/tsconfig.json', './src-main/model/tsconfig.json'],
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: ['.svelte'],
      },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      // Flat typed arrays and fixed tables are indexed inside loops whose bounds are known.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // `{ id: _, ...rest }` is how a field is left out of a copy.
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      eqeqeq: 'error',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
    rules: {
      // One page, hash links of our own: there is no router to resolve against.
      'svelte/no-navigation-without-resolve': 'off',
      // Svelte's own compiler checks reassignment of runes.
      'prefer-const': 'off',
    },
  },
  { files: ['*.js'], ...ts.configs.disableTypeChecked },
  ...layers,
);
