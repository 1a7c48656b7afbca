const Batch = () => null;

export default Batch;
