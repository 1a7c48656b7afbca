const Found = () => null;

export default Found;
