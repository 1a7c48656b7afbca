const DataOut = () => null;

export default DataOut;
