const OpenRecall = () => null;

export default OpenRecall;
