/** The head row of a table. */
export const ColumnHeads = ({ names }: { names: readonly string[] }) => (
  <thead>
    <tr>
      {names.map((name) => (
        <th key={name} scope="col">
          {name}
        </th>
      ))}
    </tr>
  </thead>
);
