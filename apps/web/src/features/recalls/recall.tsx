const Recall = () => null;

export default Recall;
