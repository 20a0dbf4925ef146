import type { Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { ProgramsEntry } from './programs-entry';

export const metadata: Metadata = { title: en(createFormatters()).programs.title };

const Page = () => <ProgramsEntry />;

export default Page;
