import { type Metadata } from 'next';
import { createFormatters } from '../../../lib/core/formatters';
import { en } from '../../../lib/core/messages/en';
import { SettingsEntry } from './settings-entry';

export const metadata: Metadata = { title: en(createFormatters()).settings.title };

const Page = () => <SettingsEntry />;

export default Page;
