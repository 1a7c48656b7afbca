const OpenBatch = () => null;

export default OpenBatch;
