import type { Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { MethodsEntry } from './methods-entry';

export const metadata: Metadata = { title: en(createFormatters()).methods.title };

const Page = () => <MethodsEntry />;

export default Page;
