/** A style sheet as text, with what it imports. */
declare module '*.css?inline' {
  const style: string;
  export default style;
}
