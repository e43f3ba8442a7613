// Style sheets are imported for their effect; webpack puts them into the page's own.
declare module "*.css";
