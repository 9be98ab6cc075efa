/** What is used of the package, which brings no types. */
declare module 'logic-solver' {
  type Term = string | Formula;
  interface Formula {
    readonly type?: string;
  }
  interface Solution {
    evaluate(term: Term): boolean;
    getFormula(): Formula;
  }
  class Solver {
    require(...terms: Term[]): void;
    forbid(...terms: Term[]): void;
    solve(): Solution | null;
  }
  function not(term: Term): Term;
  function or(...terms: Term[]): Formula;
  function and(...terms: Term[]): Formula;
  function xor(...terms: Term[]): Formula;
  const Logic: {
    Solver: typeof Solver;
    not: typeof not;
    or: typeof or;
    and: typeof and;
    xor: typeof xor;
  };
  export default Logic;
}
