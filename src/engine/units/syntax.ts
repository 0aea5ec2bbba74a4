/** HyperFormula's syntax tree, as far as a formula of ours can reach: no ranges, no arrays, no named expressions. */
export type Syntax =
  | { readonly type: 'NUMBER'; readonly value: number }
  | { readonly type: 'STRING'; readonly value: string }
  | { readonly type: 'CELL_REFERENCE'; readonly reference: { readonly row: number } }
  | { readonly type: 'PARENTHESES'; readonly expression: Syntax }
  | { readonly type: 'MINUS_UNARY_OP' | 'PLUS_UNARY_OP' | 'PERCENT_OP'; readonly value: Syntax }
  | { readonly type: BinaryOperator; readonly left: Syntax; readonly right: Syntax }
  | { readonly type: 'FUNCTION_CALL'; readonly procedureName: string; readonly args: readonly Syntax[] };

export type BinaryOperator =
  | 'PLUS_OP'
  | 'MINUS_OP'
  | 'TIMES_OP'
  | 'DIV_OP'
  | 'POWER_OP'
  | 'CONCATENATE_OP'
  | 'EQUALS_OP'
  | 'NOT_EQUAL_OP'
  | 'GREATER_THAN_OP'
  | 'LESS_THAN_OP'
  | 'GREATER_THAN_OR_EQUAL_OP'
  | 'LESS_THAN_OR_EQUAL_OP';
