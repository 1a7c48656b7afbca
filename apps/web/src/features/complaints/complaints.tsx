const Complaints = () => null;

export default Complaints;
