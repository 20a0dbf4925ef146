import { NotFoundNotice } from './_ui/not-found-notice';

const NotFound = () => <NotFoundNotice />;

export default NotFound;
