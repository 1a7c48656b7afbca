const Specification = () => null;

export default Specification;
