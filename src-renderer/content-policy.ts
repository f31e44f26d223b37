import { z } from 'zod';

// The content policy forbids making functions from text, which zod would otherwise try while schemas are built.
z.config({ jitless: true });
